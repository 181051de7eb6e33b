"""What the self-contained program holds beside its code: data files, and modules found by their files."""

from PyInstaller.utils.hooks import collect_data_files, collect_submodules

hiddenimports = [*collect_submodules("firstpaper"), "openpyxl"]
datas = [
    each
    for package in ("firstpaper", "fontpkg_arimo", "fontpkg_fira_sans")
    for each in collect_data_files(package)
]
module_collection_mode = "pyz+py"

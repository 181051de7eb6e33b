"""By when the declarations of disclosure are served."""

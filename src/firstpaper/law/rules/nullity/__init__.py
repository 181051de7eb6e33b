"""The grounds of a nullity, who may file on them, and until when."""

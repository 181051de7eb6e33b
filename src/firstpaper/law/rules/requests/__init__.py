"""Former name, fees, and the other things the petition may ask for."""

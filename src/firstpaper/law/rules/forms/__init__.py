"""Whether the forms and what goes behind them fit together."""

"""What is given on the command line as NAME=VALUE: answers, things and debts, details of events."""

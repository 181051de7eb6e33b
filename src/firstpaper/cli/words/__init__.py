"""What a person reads, and the same as plain data for programs: one module a subject, no terminal."""

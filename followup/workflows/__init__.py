"""What the program does, one verb a file."""

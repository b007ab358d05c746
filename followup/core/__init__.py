"""What the program knows and decides: plain values in, plain values out, no clock, files, network or database."""

"""Tests of the invented fleet and of the benchmarks."""

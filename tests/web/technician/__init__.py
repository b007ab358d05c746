"""Tests of the technician's pages."""

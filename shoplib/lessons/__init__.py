"""The exercise engine, and one module of exercises for each lesson."""

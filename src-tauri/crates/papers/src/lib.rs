//! Drawing operations and their SVG, PNG and PDF; labels, build sheets and tables of records.

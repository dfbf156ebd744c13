//! Reading pictures: QR codes from photographs.

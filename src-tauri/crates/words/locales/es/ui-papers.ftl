# Words of the papers: build sheet, certificate, report.
papers-title = Papeles
papers-context = de la manguera en mano
papers-kind = Papel
papers-build-sheet = Hoja de fabricación
papers-certificate = Certificado
papers-report = Informe
papers-size = Tamaño
papers-preview = { $paper } como se imprime
papers-closer = Ver de cerca
papers-whole = La página entera
papers-signature = Firma
papers-sign-how = Firma quien la hizo. Queda en el papel tal como se dibuja aquí.
papers-save = Guardar como PDF
papers-save-then = { $paper }, { $size }
papers-share = Compartir
papers-not-yet = Certificado e informe llegan cuando la manguera está en el registro.
papers-not-made = SIN PAPEL

package org.amberyard.charts;

import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/** Writes charts as pictures. The same chart gives the same bytes; title and text alternative go into the file. */
public final class ChartExport {
    private ChartExport() {
    }

    /**
     * Writes a PNG.
     *
     * @param width width in chart units
     * @param height height in chart units
     * @param scale pixels per chart unit, for example 2 for a sharp print
     */
    public static void png(Chart chart, OutputStream out, int width, int height, double scale) throws IOException {
        PngFile.write(image(chart, width, height, scale), chart.title(), chart.textAlternative(), out);
    }

    /** Writes a PNG file; see {@link #png(Chart, OutputStream, int, int, double)}. */
    public static void png(Chart chart, Path file, int width, int height, double scale) throws IOException {
        try (OutputStream out = new BufferedOutputStream(Files.newOutputStream(file))) {
            png(chart, out, width, height, scale);
        }
    }

    /** Paints the chart into an image of {@code width * scale} by {@code height * scale} pixels. */
    public static BufferedImage image(Chart chart, int width, int height, double scale) {
        BufferedImage image = new BufferedImage((int) Math.round(width * scale), (int) Math.round(height * scale),
                BufferedImage.TYPE_INT_RGB);
        Graphics2D graphics = image.createGraphics();
        try {
            ChartHints.set(graphics);
            graphics.scale(scale, scale);
            chart.chart().draw(graphics, new Rectangle2D.Double(0, 0, width, height));
        } finally {
            graphics.dispose();
        }
        return image;
    }

    /** Writes an SVG document in UTF-8. */
    public static void svg(Chart chart, OutputStream out, int width, int height) throws IOException {
        out.write(svg(chart, width, height).getBytes(StandardCharsets.UTF_8));
    }

    /** Writes an SVG file in UTF-8. */
    public static void svg(Chart chart, Path file, int width, int height) throws IOException {
        Files.writeString(file, svg(chart, width, height), StandardCharsets.UTF_8);
    }

    /** Writes a PDF document of one page, drawn in vectors. */
    public static void pdf(Chart chart, OutputStream out, int width, int height) throws IOException {
        PdfFile.write(chart, out, width, height);
    }

    /** Writes a PDF file; see {@link #pdf(Chart, OutputStream, int, int)}. */
    public static void pdf(Chart chart, Path file, int width, int height) throws IOException {
        try (OutputStream out = new BufferedOutputStream(Files.newOutputStream(file))) {
            pdf(chart, out, width, height);
        }
    }

    /** The chart as an SVG document. */
    public static String svg(Chart chart, int width, int height) {
        return SvgFile.of(chart, width, height);
    }
}

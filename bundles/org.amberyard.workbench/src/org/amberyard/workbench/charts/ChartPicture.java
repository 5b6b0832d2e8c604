package org.amberyard.workbench.charts;

import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.awt.image.DataBufferInt;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import org.amberyard.charts.Chart;
import org.amberyard.charts.Subject;
import org.amberyard.workbench.language.Words;
import org.eclipse.swt.graphics.Device;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.ImageDataProvider;
import org.eclipse.swt.graphics.PaletteData;
import org.jfree.chart.ChartRenderingInfo;
import org.jfree.chart.entity.ChartEntity;

/**
 * A chart painted for one size and zoom, with the places of what it shows. May be made on any thread.
 *
 * @param chart the chart
 * @param width width in points
 * @param height height in points
 * @param zoom zoom of the monitor in per cent
 * @param pixels the picture
 * @param info the places
 */
record ChartPicture(Chart chart, int width, int height, int zoom, ImageData pixels, ChartRenderingInfo info) {

    /** Charts are drawn for a page of this width; on a smaller canvas they shrink down to the smallest scale. */
    private static final double PAGE_WIDTH = 760;
    private static final double SMALLEST_SCALE = 0.84;

    /** Paints a chart as wide as a canvas and at least as high, higher where it could not be read. */
    static ChartPicture paint(Chart chart, int width, int canvasHeight, int zoom) {
        double scale = scale(width);
        int height = Math.max(canvasHeight, (int) Math.round(scale * chart.leastHeight()));
        int pixelWidth = Math.max(1, width * zoom / 100);
        int pixelHeight = Math.max(1, height * zoom / 100);
        BufferedImage image = new BufferedImage(pixelWidth, pixelHeight, BufferedImage.TYPE_INT_RGB);
        ChartRenderingInfo info = new ChartRenderingInfo();
        Graphics2D graphics = image.createGraphics();
        try {
            graphics.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
            graphics.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
            graphics.scale(scale * zoom / 100, scale * zoom / 100);
            // An export may be drawing the same chart; charts keep state while they are drawn.
            synchronized (chart.chart()) {
                chart.chart().draw(graphics, new Rectangle2D.Double(0, 0, width / scale, height / scale), info);
            }
        } finally {
            graphics.dispose();
        }
        return new ChartPicture(chart, width, height, zoom, pixels(image), info);
    }

    private static double scale(int width) {
        return Math.max(SMALLEST_SCALE, Math.min(1, width / PAGE_WIDTH));
    }

    private static ImageData pixels(BufferedImage image) {
        ImageData data = new ImageData(image.getWidth(), image.getHeight(), 24, new PaletteData(0xFF0000, 0xFF00, 0xFF));
        int[] rgb = ((DataBufferInt) image.getRaster().getDataBuffer()).getData();
        for (int y = 0; y < data.height; y++) {
            data.setPixels(0, y, data.width, rgb, y * data.width);
        }
        return data;
    }

    /** The picture for a canvas. */
    Image image(Device device) {
        ImageDataProvider provider = z -> z == zoom ? pixels : pixels.scaledTo(width * z / 100, height * z / 100);
        return new Image(device, provider);
    }

    /** What the chart says about a place, or null. */
    String tip(int x, int y) {
        return entity(x, y).map(ChartEntity::getToolTipText).map(Words::say).orElse(null);
    }

    /** The part of the study behind a place. */
    Optional<Subject> subject(int x, int y) {
        return entity(x, y).flatMap(chart.subjects()::of);
    }

    private Optional<ChartEntity> entity(int x, int y) {
        double scale = scale(width);
        return Optional.ofNullable(info.getEntityCollection()).map(all -> all.getEntity(x / scale, y / scale));
    }

    /** The parts of the study behind all that is drawn, each once. */
    List<Subject> subjects() {
        Collection<?> all = info.getEntityCollection() == null ? List.of() : info.getEntityCollection().getEntities();
        return all.stream().map(ChartEntity.class::cast).flatMap(e -> chart.subjects().of(e).stream()).distinct().toList();
    }
}

package org.amberyard.workbench.charts;

import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.awt.image.DataBufferInt;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import org.amberyard.charts.Chart;
import org.amberyard.charts.ChartFit;
import org.amberyard.charts.ChartHints;
import org.amberyard.charts.ChartLens;
import org.amberyard.charts.ChartLook;
import org.amberyard.charts.ChartPoint;
import org.amberyard.charts.ChartZoom;
import org.amberyard.charts.Subject;
import org.amberyard.workbench.language.Words;
import org.eclipse.swt.graphics.Device;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.ImageDataProvider;
import org.eclipse.swt.graphics.PaletteData;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.jfree.chart.ChartRenderingInfo;
import org.jfree.chart.entity.ChartEntity;
import org.jfree.chart.entity.LegendItemEntity;

/**
 * A chart painted for one size and zoom, with the places of what it shows. May be made on any thread.
 *
 * @param chart the chart
 * @param lens what it is looked at through
 * @param look how it is looked at
 * @param width width in points
 * @param height height in points
 * @param zoom zoom of the monitor in per cent
 * @param pixels the picture
 * @param info the places
 */
record ChartPicture(Chart chart, ChartLens lens, ChartLook look, int width, int height, int zoom, ImageData pixels,
        ChartRenderingInfo info) {

    /** Charts are drawn for a page of this width; on a smaller canvas they shrink down to the smallest scale. */
    private static final double PAGE_WIDTH = 760;
    private static final double SMALLEST_SCALE = 0.84;

    /** Paints a chart as wide as a canvas and at least as high, higher where it could not be read. */
    static ChartPicture paint(Chart chart, ChartLens lens, ChartLook look, int width, int canvasHeight, int zoom) {
        double scale = scale(width);
        int least = Math.max(canvasHeight, (int) Math.round(scale * chart.leastHeight()));
        // An export may be drawing the same chart; charts keep state while they are drawn.
        synchronized (chart.chart()) {
            lens.look(look);
            try (ChartFit fit = ChartFit.of(chart.chart(), width / scale, least / scale)) {
                return paint(chart, lens, look, new Point(width, (int) Math.ceil(scale * fit.height())), zoom);
            }
        }
    }

    private static ChartPicture paint(Chart chart, ChartLens lens, ChartLook look, Point size, int zoom) {
        double scale = scale(size.x);
        BufferedImage image = new BufferedImage(Math.max(1, size.x * zoom / 100), Math.max(1, size.y * zoom / 100), BufferedImage.TYPE_INT_RGB);
        ChartRenderingInfo info = new ChartRenderingInfo();
        Graphics2D graphics = image.createGraphics();
        try {
            ChartHints.set(graphics);
            graphics.scale(scale * zoom / 100, scale * zoom / 100);
            chart.chart().draw(graphics, new Rectangle2D.Double(0, 0, size.x / scale, size.y / scale), info);
        } finally {
            graphics.dispose();
        }
        return new ChartPicture(chart, lens, look, size.x, size.y, zoom, pixels(image), info);
    }

    private static double scale(int width) {
        return Math.max(SMALLEST_SCALE, Math.min(1, width / PAGE_WIDTH));
    }

    /** A picture of one library in the form of the other. */
    static ImageData pixels(BufferedImage image) {
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

    /** Where the plot lies in the picture. */
    Rectangle plotArea() {
        Rectangle2D area = info.getPlotInfo().getDataArea();
        double scale = scale(width);
        return new Rectangle((int) (scale * area.getX()), (int) (scale * area.getY()), Math.max(1, (int) (scale * area.getWidth())),
                Math.max(1, (int) (scale * area.getHeight())));
    }

    /** The place on the chart at a place in the picture, or the nearest one in the plot. */
    ChartPoint at(Point place) {
        Rectangle area = plotArea();
        synchronized (chart.chart()) {
            return lens.at(share(place.x - area.x, area.width), 1 - share(place.y - area.y, area.height));
        }
    }

    private static double share(int from, int length) {
        return Math.max(0, Math.min(1, (double) from / length));
    }

    /** A part of what it shows, as shares of the plot from left and bottom; empty for the whole chart. */
    Optional<ChartZoom> part(double left, double right, double bottom, double top) {
        synchronized (chart.chart()) {
            return lens.part(left, right, bottom, top);
        }
    }

    /** What is on show, in words. */
    String words() {
        synchronized (chart.chart()) {
            return chart.textAlternative() + Words.say(lens.words(look));
        }
    }

    /** The chart as it is to leave the window, looked at as it is here. */
    Chart lookedAt(Chart onPaper) {
        if (onPaper != chart) {
            new ChartLens(onPaper).look(look);
        }
        return new Chart(onPaper.name(), onPaper.title(), onPaper.chart(), words(), onPaper.data(), onPaper.preferredHeight(),
                onPaper.leastHeight(), onPaper.subjects());
    }

    /** What the legend names at a place and can be hidden. */
    Optional<String> legend(int x, int y) {
        return entity(x, y).filter(LegendItemEntity.class::isInstance)
                .map(e -> ((LegendItemEntity) e).getSeriesKey()).map(Object::toString).filter(lens.series()::contains);
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

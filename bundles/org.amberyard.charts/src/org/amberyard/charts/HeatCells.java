package org.amberyard.charts;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import org.jfree.chart.axis.ValueAxis;
import org.jfree.chart.plot.CrosshairState;
import org.jfree.chart.plot.PlotRenderingInfo;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYBlockRenderer;
import org.jfree.chart.renderer.xy.XYItemRendererState;
import org.jfree.chart.text.TextUtils;
import org.jfree.chart.ui.TextAnchor;
import org.jfree.data.xy.XYDataset;

/**
 * Cells of a heat map with their words in them. A colour is never the only signal: what fails says so, and what fails when
 * aged has a frame as well.
 */
final class HeatCells extends XYBlockRenderer {
    private static final long serialVersionUID = 1L;
    private static final float SMALLEST_FONT = 7;
    private static final double GAP = 1;
    private static final double MARGIN = 2;
    private static final float FRAME = 2;

    private final transient List<RangeMonths.Cell> cells;
    private final transient List<List<String>> words;
    private final transient ChartTheme theme;

    /** A renderer of cells in the order of the dataset. */
    HeatCells(List<RangeMonths.Cell> cells, List<List<String>> words, ChartTheme theme) {
        this.cells = cells;
        this.words = words;
        this.theme = theme;
    }

    @Override
    public void drawItem(Graphics2D graphics, XYItemRendererState state, Rectangle2D area, PlotRenderingInfo info,
            XYPlot plot, ValueAxis months, ValueAxis routes, XYDataset dataset, int series, int item,
            CrosshairState crosshair, int pass) {
        Rectangle2D cell = cell(area, plot, months, routes, dataset.getXValue(series, item),
                dataset.getYValue(series, item));
        fill(graphics, cell, cells.get(item).standing());
        write(graphics, cell, item);
        if (info != null && info.getOwner().getEntityCollection() != null) {
            addEntity(info.getOwner().getEntityCollection(), cell, dataset, series, item, cell.getCenterX(),
                    cell.getCenterY());
        }
    }

    private static Rectangle2D cell(Rectangle2D area, XYPlot plot, ValueAxis months, ValueAxis routes, double month,
            double route) {
        double left = months.valueToJava2D(month - 0.5, area, plot.getDomainAxisEdge());
        double right = months.valueToJava2D(month + 0.5, area, plot.getDomainAxisEdge());
        double top = routes.valueToJava2D(route - 0.5, area, plot.getRangeAxisEdge());
        double bottom = routes.valueToJava2D(route + 0.5, area, plot.getRangeAxisEdge());
        return new Rectangle2D.Double(left + GAP, top + GAP, right - left - 2 * GAP, bottom - top - 2 * GAP);
    }

    private void fill(Graphics2D graphics, Rectangle2D cell, MonthStanding standing) {
        graphics.setPaint(ground(standing, theme));
        graphics.fill(cell);
        if (standing == MonthStanding.NEW_ONLY) {
            graphics.setPaint(theme.fails(false));
            graphics.setStroke(new BasicStroke(FRAME));
            graphics.draw(new Rectangle2D.Double(cell.getX() + FRAME / 2, cell.getY() + FRAME / 2, cell.getWidth() - FRAME,
                    cell.getHeight() - FRAME));
        }
    }

    /** Ground of a cell. */
    static Color ground(MonthStanding standing, ChartTheme theme) {
        return switch (standing) {
            case FOR_LIFE -> theme.passes(true);
            case NEW_ONLY -> theme.fails(true);
            case FAILS -> theme.fails(false);
            case NOT_DRIVEN, NOT_JUDGED -> theme.background();
        };
    }

    private Color ink(MonthStanding standing) {
        return switch (standing) {
            case FAILS -> theme.background();
            case FOR_LIFE, NEW_ONLY -> theme.text();
            case NOT_DRIVEN, NOT_JUDGED -> theme.quietText();
        };
    }

    private void write(Graphics2D graphics, Rectangle2D cell, int item) {
        List<String> lines = words.get(item);
        Font font = font(graphics, cell.getWidth() - 2 * MARGIN);
        graphics.setFont(font);
        graphics.setPaint(ink(cells.get(item).standing()));
        double lineHeight = 1.1 * font.getSize2D();
        double y = cell.getCenterY() - (lines.size() - 1) * lineHeight / 2;
        for (String line : lines) {
            TextUtils.drawAlignedString(line, graphics, (float) cell.getCenterX(), (float) y, TextAnchor.CENTER);
            y += lineHeight;
        }
    }

    /** One size for all cells, so small that the longest words fit in. */
    private Font font(Graphics2D graphics, double width) {
        Font font = theme.tickFont();
        double widest = words.stream().flatMap(List::stream).mapToDouble(graphics.getFontMetrics(font)::stringWidth).max()
                .orElse(width);
        return widest <= width ? font
                : font.deriveFont(Math.max(SMALLEST_FONT, (float) (font.getSize2D() * width / widest)));
    }
}

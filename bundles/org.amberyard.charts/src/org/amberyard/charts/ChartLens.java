package org.amberyard.charts;

import java.awt.Color;
import java.awt.Font;
import java.awt.geom.Point2D;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.jfree.chart.plot.CategoryPlot;
import org.jfree.chart.plot.Plot;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.title.TextTitle;
import org.jfree.data.Range;

/**
 * Looks at a chart: hides some of what its legend names, which is grey there from then on, shows a part of it, and what was
 * noted on it. To be made once for each chart, and used by one thread at a time.
 */
public final class ChartLens {
    /** Zooming goes no further than to this share of the whole. */
    private static final double CLOSEST = 1 / 400.0;

    private static final Pattern UNIT = Pattern.compile("\\([^()]*\\)");
    private static final int REMARK_SIZE = 11;

    private final Plot drawn;
    private final LensPlot plot;
    private final LegendShades legend;
    private final List<String> series;
    private final Range data;
    private final RemarkLayer.Look remarkLook;
    private Span across;
    private Span upward;
    private Span shownAcross;
    private Span shownUpward;

    /** A lens over a chart that none has looked at before. */
    public ChartLens(Chart chart) {
        drawn = chart.chart().getPlot();
        plot = LensPlot.of(drawn);
        legend = new LegendShades(drawn.getLegendItems(), (Color) chart.chart().getTitle().getPaint(),
                (Color) chart.chart().getBackgroundPaint());
        series = named();
        legend.key(series);
        data = plot.dataRange();
        TextTitle title = chart.chart().getTitle();
        remarkLook = new RemarkLayer.Look((Color) chart.chart().getBackgroundPaint(), (Color) title.getPaint(),
                title.getFont().deriveFont(Font.PLAIN, REMARK_SIZE));
        look(ChartLook.WHOLE);
    }

    private List<String> named() {
        Set<String> keys = new HashSet<>();
        plot.each((at, name) -> keys.add(name));
        return legend.names().stream().filter(keys::contains).distinct().toList();
    }

    /** What can be hidden, as the legend names it and in its order. */
    public List<String> series() {
        return series;
    }

    /** Shows the chart so; names that it does not have and parts of other axes mean nothing to it. */
    public void look(ChartLook look) {
        plot.across().reset();
        plot.upward().reset();
        Set<String> hidden = hidden(look);
        plot.hide(hidden);
        if (!series.isEmpty()) {
            writeLegend(hidden);
        }
        if (!hidden.isEmpty()) {
            plot.fit(data);
        }
        across = plot.across().whole();
        upward = plot.upward().whole();
        shownAcross = across;
        shownUpward = upward;
        look.zoom().filter(z -> z.axes().equals(axes())).ifPresent(this::show);
        plot.layOver(new RemarkLayer(look.remarks().stream().map(this::placed).toList(), remarkLook));
    }

    private RemarkLayer.Placed placed(ChartRemark remark) {
        return new RemarkLayer.Placed(remark.text(), Optional.of(remark.at()).filter(at -> at.units().equals(units()))
                .map(at -> new Point2D.Double(share(plot.across(), shownAcross, at.across()),
                        share(plot.upward(), shownUpward, at.upward()))));
    }

    private static double share(ZoomAxis axis, Span shown, double place) {
        return axis.isReversed() ? 1 - shown.share(place) : shown.share(place);
    }

    /** The place at a share of what is shown of the width from the left and of the height from the bottom. */
    public ChartPoint at(double across, double upward) {
        return new ChartPoint(units(), shownAcross.at(plot.across().isReversed() ? 1 - across : across),
                shownUpward.at(plot.upward().isReversed() ? 1 - upward : upward));
    }

    /** Units of the axes, which stand in brackets on them in all languages. */
    private String units() {
        return UNIT.matcher(plot.across().label() + "|" + plot.upward().label()).results().map(MatchResult::group)
                .collect(Collectors.joining(" "));
    }

    private Set<String> hidden(ChartLook look) {
        Set<String> hidden = new TreeSet<>(look.hidden());
        hidden.retainAll(series);
        return hidden;
    }

    private void show(ChartZoom zoom) {
        shownAcross = zoom.across().within(across);
        shownUpward = zoom.upward().within(upward);
        plot.across().show(shownAcross);
        plot.upward().show(shownUpward);
    }

    /** What is looked at in words, for those who do not see it; blank for the whole. */
    public String words(ChartLook look) {
        Set<String> hidden = hidden(look);
        String zoomed = shownAcross.equals(across) && shownUpward.equals(upward) ? "" : " Zoomed in.";
        String noted = look.remarks().stream().map(r -> " Note: " + r.text()).collect(Collectors.joining());
        return (hidden.isEmpty() ? "" : " Hidden: " + String.join(", ", hidden) + ".") + zoomed + noted;
    }

    private String axes() {
        return plot.across().label() + "\n" + plot.upward().label();
    }

    /**
     * A part of what is shown, as shares of its width from the left and of its height from the bottom; empty when that would be
     * the whole chart.
     */
    public Optional<ChartZoom> part(double left, double right, double bottom, double top) {
        Span nextAcross = part(plot.across(), shownAcross, left, right, across);
        Span nextUpward = part(plot.upward(), shownUpward, bottom, top, upward);
        boolean whole = nextAcross.length() >= across.length() && nextUpward.length() >= upward.length();
        return whole ? Optional.empty() : Optional.of(new ChartZoom(axes(), nextAcross, nextUpward));
    }

    private static Span part(ZoomAxis axis, Span shown, double from, double to, Span whole) {
        double least = CLOSEST * whole.length() / shown.length();
        double end = Math.max(to, from + least);
        return (axis.isReversed() ? shown.part(1 - end, 1 - from) : shown.part(from, end)).within(whole);
    }

    private void writeLegend(Set<String> hidden) {
        if (drawn instanceof XYPlot points) {
            points.setFixedLegendItems(legend.shaded(hidden));
        } else {
            ((CategoryPlot) drawn).setFixedLegendItems(legend.shaded(hidden));
        }
    }
}

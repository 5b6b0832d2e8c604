package org.amberyard.charts;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.Stroke;
import java.util.List;
import org.amberyard.core.money.CostCategory;

/**
 * Colours, fonts and strokes of all charts. A cost group and a plan have the same colour in every chart; plans differ by
 * dash as well, since colour is never the only signal. The palettes stay apart under the common kinds of colour blindness.
 */
public final class ChartTheme {
    private static final List<float[]> DASHES = List.of(new float[] {}, new float[] {9, 4}, new float[] {2.5f, 3},
            new float[] {12, 3, 2.5f, 3}, new float[] {5, 2.5f});

    /** Place of the ground of dear hours, after the three colours of a sequence. */
    private static final int RAMP_PRICE = 3;

    /** On white, for a light window and for everything printed. */
    private static final ChartTheme LIGHT = new ChartTheme(new Surface(0xFFFFFF, 0x1F2328, 0x5B636D, 0xDFE3E8),
            List.of(0x27496D, 0xA8508F, 0xE7A42E, 0x74B9A5, 0xC6CBD2),
            List.of(0x454B54, 0x1668A7, 0xC4511D, 0x4FB08C, 0xD9B62E), new Signals(0x27496D, 0xA9C1DA, 0xB5391F, 0xF0B9A4),
            List.of(0x1F3F66, 0x3E8FB0, 0xBFE3D0, 0xFBE6C6));
    /** On near-black, for a dark window. */
    private static final ChartTheme DARK = new ChartTheme(new Surface(0x1E2126, 0xE8EAED, 0xA9B1BB, 0x3A4048),
            List.of(0x5B8DC9, 0xE08CC4, 0xF0B64C, 0x8FD3BF, 0x777F8A),
            List.of(0xC9CED6, 0x62A8E5, 0xF0875A, 0x7BDDB8, 0x8A7A2A), new Signals(0x7FB0E6, 0x34567C, 0xFF8A6B, 0x7D3A2A),
            List.of(0x2F5C91, 0x4FA3C4, 0xCDEBDB, 0x4A3A22));

    /** Of stronger colours for cost groups and plans: after Okabe and Ito, "Color Universal Design" (2008), from memory. */
    private static final ChartTheme STRONG_LIGHT = new ChartTheme(LIGHT, List.of(0x0072B2, 0xCC79A7, 0xE69F00, 0x56B4E9, 0xC6CBD2),
            List.of(0x000000, 0x0072B2, 0xD55E00, 0x009E73, 0xE69F00));
    private static final ChartTheme STRONG_DARK = new ChartTheme(DARK, List.of(0x0072B2, 0xCC79A7, 0xE69F00, 0x56B4E9, 0xF0E442),
            List.of(0xE8EAED, 0x56B4E9, 0xD55E00, 0x0072B2, 0xF0E442));

    private final Surface surface;
    private final List<Color> groups;
    private final List<Color> plans;
    private final Signals signals;
    private final List<Color> ramp;

    private record Surface(int background, int text, int quietText, int gridline) {
    }

    private record Signals(int passes, int passesPale, int fails, int failsPale) {
    }

    private ChartTheme(Surface surface, List<Integer> groups, List<Integer> plans, Signals signals,
            List<Integer> ramp) {
        this.surface = surface;
        this.groups = groups.stream().map(Color::new).toList();
        this.plans = plans.stream().map(Color::new).toList();
        this.signals = signals;
        this.ramp = ramp.stream().map(Color::new).toList();
    }

    private ChartTheme(ChartTheme like, List<Integer> groups, List<Integer> plans) {
        this.surface = like.surface;
        this.groups = groups.stream().map(Color::new).toList();
        this.plans = plans.stream().map(Color::new).toList();
        this.signals = like.signals;
        this.ramp = like.ramp;
    }

    /** On white, with strong colours that stay apart for all kinds of eyes. */
    public static ChartTheme strongLight() {
        return STRONG_LIGHT;
    }

    /** On near-black, with strong colours that stay apart for all kinds of eyes. */
    public static ChartTheme strongDark() {
        return STRONG_DARK;
    }

    /** On white, for a light window and for everything printed. */
    public static ChartTheme light() {
        return LIGHT;
    }

    /** On near-black, for a dark window. */
    public static ChartTheme dark() {
        return DARK;
    }

    /** Background of chart and plot. */
    public Color background() {
        return new Color(surface.background());
    }

    /** Titles and labels. */
    public Color text() {
        return new Color(surface.text());
    }

    /** Subtitles, ticks and axis lines. */
    public Color quietText() {
        return new Color(surface.quietText());
    }

    /** Gridlines. */
    public Color gridline() {
        return new Color(surface.gridline());
    }

    /** Colour of a cost group. */
    public Color group(CostCategory.Group group) {
        return groups.get(group.ordinal());
    }

    /** Colour of a plan by its place in the study; of a line by its place where a chart shows no plans. */
    public Color plan(int place) {
        return plans.get(place % plans.size());
    }

    /** Line of a plan, or of whatever {@link #plan} colours, by its place; dashes repeat later than colours do. */
    public Stroke planStroke(int place) {
        float[] dash = DASHES.get((place + place / plans.size()) % DASHES.size());
        return dash.length == 0 ? new BasicStroke(2.4f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND)
                : new BasicStroke(2.4f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 1, dash, 0);
    }

    /** One of several things of a kind in order, from dark to light, so that order and neighbours show without colours. */
    public Color oneOf(int place, int count) {
        double at = count < 2 ? 0 : 2.0 * place / (count - 1);
        return at < 1 ? between(ramp.get(0), ramp.get(1), at) : between(ramp.get(1), ramp.get(2), at - 1);
    }

    /** Ground of hours of a price: none for the lowest level, the strongest for the highest. */
    public Color price(int level, int levels) {
        return between(background(), ramp.get(RAMP_PRICE), levels < 2 ? 0 : (double) level / (levels - 1));
    }

    /** Load of the building. */
    public Color building() {
        return groups.get(groups.size() - 1);
    }

    /** A mixture of two colours. */
    static Color between(Color from, Color to, double share) {
        return new Color(mixed(from.getRed(), to.getRed(), share), mixed(from.getGreen(), to.getGreen(), share),
                mixed(from.getBlue(), to.getBlue(), share));
    }

    private static int mixed(int from, int to, double share) {
        return (int) Math.round(from + share * (to - from));
    }

    /** What passes; pale for the background of a pair. */
    public Color passes(boolean pale) {
        return new Color(pale ? signals.passesPale() : signals.passes());
    }

    /** What fails; pale for the background of a pair. */
    public Color fails(boolean pale) {
        return new Color(pale ? signals.failsPale() : signals.fails());
    }

    /** Font of titles. */
    public Font titleFont() {
        return new Font(Font.SANS_SERIF, Font.BOLD, 16);
    }

    /** Font of subtitles, axis titles and legends. */
    public Font labelFont() {
        return new Font(Font.SANS_SERIF, Font.PLAIN, 12);
    }

    /** Font of figures along an axis and in the plot. */
    public Font tickFont() {
        return new Font(Font.SANS_SERIF, Font.PLAIN, 11);
    }
}

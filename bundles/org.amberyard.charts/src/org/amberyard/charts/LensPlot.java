package org.amberyard.charts;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiConsumer;
import java.util.function.IntFunction;
import java.util.stream.IntStream;
import org.jfree.chart.axis.ValueAxis;
import org.jfree.chart.plot.CategoryPlot;
import org.jfree.chart.plot.Plot;
import org.jfree.chart.plot.PlotOrientation;
import org.jfree.chart.plot.ValueAxisPlot;
import org.jfree.chart.plot.XYPlot;
import org.jfree.data.Range;
import org.jfree.data.category.CategoryDataset;
import org.jfree.data.category.DefaultCategoryDataset;
import org.jfree.data.xy.IntervalXYDataset;
import org.jfree.data.xy.TableXYDataset;
import org.jfree.data.xy.XYDataset;

/** A plot whose axes can be zoomed and whose series can be hidden, whichever kind it is. */
abstract class LensPlot {
    private final ValueAxisPlot plot;
    private final ValueAxis valueAxis;
    private final ZoomValues values;
    private RemarkLayer layer = new RemarkLayer(List.of(), null);

    /** @param values axes on which values stand, the first of them that of the values shown */
    private LensPlot(ValueAxisPlot plot, ValueAxis valueAxis, ZoomValues values) {
        this.plot = plot;
        this.valueAxis = valueAxis;
        this.values = values;
    }

    /** The plot of a chart, as it was made. */
    static LensPlot of(Plot plot) {
        if (plot instanceof XYPlot points) {
            return new Points(points);
        }
        return new Bars((CategoryPlot) plot);
    }

    abstract ZoomAxis across();

    abstract ZoomAxis upward();

    /** Fits axes that were made for figures up to a size to those that are shown. */
    final void fit(Range wholeData) {
        values().fit(valueAxis(), wholeData, dataRange());
    }

    final ZoomValues values() {
        return values;
    }

    final ValueAxis valueAxis() {
        return valueAxis;
    }

    final Range dataRange() {
        return valueAxis == null ? null : plot.getDataRange(valueAxis);
    }

    /** Calls with the dataset and the place of each series, and its name in the legend. */
    abstract void each(BiConsumer<int[], String> visitor);

    /** Draws notes over the plot, in place of those before. */
    final void layOver(RemarkLayer next) {
        remove(layer);
        layer = next;
        add(next);
    }

    abstract void add(RemarkLayer notes);

    abstract void remove(RemarkLayer notes);

    /** Hides the series of a name, and shows the others. */
    abstract void hide(Set<String> names);

    static String legend(Comparable<?> key) {
        return key instanceof LegendKey named ? named.legend() : key.toString();
    }

    private static <T> List<T> all(int count, IntFunction<T> at) {
        return IntStream.range(0, count).mapToObj(at).filter(Objects::nonNull).toList();
    }

    /** Places of the series that are hidden. */
    private static Set<Integer> places(int count, IntFunction<Comparable<?>> key, Set<String> names) {
        return Set.copyOf(IntStream.range(0, count).filter(i -> names.contains(legend(key.apply(i)))).boxed().toList());
    }

    /** Lines, points, areas and cells. */
    private static final class Points extends LensPlot {
        private final XYPlot plot;
        private final ZoomValues domain;
        private final List<XYDataset> made = new ArrayList<>();

        Points(XYPlot plot) {
            super(plot, plot.getRangeAxis(), new ZoomValues(all(plot.getRangeAxisCount(), plot::getRangeAxis)));
            this.plot = plot;
            domain = new ZoomValues(all(plot.getDomainAxisCount(), plot::getDomainAxis));
            IntStream.range(0, plot.getDatasetCount()).forEach(i -> made.add(plot.getDataset(i)));
        }

        @Override
        ZoomAxis across() {
            return domain;
        }

        @Override
        void add(RemarkLayer notes) {
            plot.addAnnotation(notes);
        }

        @Override
        void remove(RemarkLayer notes) {
            plot.removeAnnotation(notes);
        }

        @Override
        ZoomAxis upward() {
            return values();
        }

        @Override
        void each(BiConsumer<int[], String> visitor) {
            for (int set = 0; set < made.size(); set++) {
                for (int series = 0; made.get(set) != null && series < made.get(set).getSeriesCount(); series++) {
                    visitor.accept(new int[] {set, series}, legend(made.get(set).getSeriesKey(series)));
                }
            }
        }

        @Override
        void hide(Set<String> names) {
            for (int set = 0; set < made.size(); set++) {
                if (made.get(set) instanceof IntervalXYDataset layers && layers instanceof TableXYDataset) {
                    Set<Integer> hidden = places(layers.getSeriesCount(), layers::getSeriesKey, names);
                    plot.setDataset(set, hidden.isEmpty() ? layers : new WithoutSeries(layers, hidden));
                }
            }
            each((at, name) -> Optional.ofNullable(plot.getRenderer(at[0])).ifPresent(r -> r.setSeriesVisible(at[1], !names.contains(name))));
        }
    }

    /** Bars, and lines across them. */
    private static final class Bars extends LensPlot {
        private final CategoryPlot plot;
        private final boolean lying;
        private final ZoomBars bars;
        private final List<CategoryDataset> made = new ArrayList<>();

        Bars(CategoryPlot plot) {
            super(plot, plot.getRangeAxis(), new ZoomValues(all(plot.getRangeAxisCount(), plot::getRangeAxis)));
            this.plot = plot;
            lying = plot.getOrientation() == PlotOrientation.HORIZONTAL;
            int count = plot.getDataset() == null ? 0 : plot.getDataset().getColumnCount();
            bars = new ZoomBars(plot.getDomainAxis(), count, lying);
            IntStream.range(0, plot.getDatasetCount()).forEach(i -> made.add(plot.getDataset(i)));
        }

        @Override
        ZoomAxis across() {
            return lying ? values() : bars;
        }

        @Override
        void add(RemarkLayer notes) {
            plot.addAnnotation(notes);
        }

        @Override
        void remove(RemarkLayer notes) {
            plot.removeAnnotation(notes);
        }

        @Override
        ZoomAxis upward() {
            return lying ? bars : values();
        }

        @Override
        void each(BiConsumer<int[], String> visitor) {
            for (int set = 0; set < made.size(); set++) {
                for (int series = 0; made.get(set) != null && series < made.get(set).getRowCount(); series++) {
                    visitor.accept(new int[] {set, series}, legend(made.get(set).getRowKey(series)));
                }
            }
        }

        /** Stacked bars ask for the sums of all that has a figure, so hidden ones lose theirs. */
        @Override
        void hide(Set<String> names) {
            for (int set = 0; set < made.size(); set++) {
                CategoryDataset whole = made.get(set);
                if (whole != null && whole.getClass() == DefaultCategoryDataset.class) {
                    Set<Integer> hidden = places(whole.getRowCount(), whole::getRowKey, names);
                    plot.setDataset(set, hidden.isEmpty() ? whole : without(whole, hidden));
                }
            }
            each((at, name) -> Optional.ofNullable(plot.getRenderer(at[0])).ifPresent(r -> r.setSeriesVisible(at[1], !names.contains(name))));
        }

        private static CategoryDataset without(CategoryDataset whole, Set<Integer> hidden) {
            DefaultCategoryDataset rest = new DefaultCategoryDataset();
            for (int row = 0; row < whole.getRowCount(); row++) {
                for (int column = 0; column < whole.getColumnCount(); column++) {
                    Number value = hidden.contains(row) ? null : whole.getValue(row, column);
                    rest.addValue(value, whole.getRowKey(row), whole.getColumnKey(column));
                }
            }
            return rest;
        }
    }
}

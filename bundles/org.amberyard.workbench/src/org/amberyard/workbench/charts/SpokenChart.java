package org.amberyard.workbench.charts;

import java.util.List;
import org.amberyard.charts.Chart;
import org.amberyard.workbench.language.Words;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.LegendItem;
import org.jfree.chart.LegendItemCollection;
import org.jfree.chart.LegendItemSource;
import org.jfree.chart.annotations.TextAnnotation;
import org.jfree.chart.annotations.XYTextAnnotation;
import org.jfree.chart.axis.Axis;
import org.jfree.chart.axis.CategoryAxis;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.SymbolAxis;
import org.jfree.chart.labels.XYItemLabelGenerator;
import org.jfree.chart.plot.CategoryPlot;
import org.jfree.chart.plot.CombinedDomainXYPlot;
import org.jfree.chart.plot.Marker;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.category.CategoryItemRenderer;
import org.jfree.chart.renderer.xy.XYItemRenderer;
import org.jfree.chart.title.LegendTitle;
import org.jfree.chart.title.TextTitle;
import org.jfree.chart.ui.Layer;

/** Gives a chart that was just made the words of the window: title, legend, axes and marks; figures as the locale writes them. */
final class SpokenChart {
    private static final List<Layer> LAYERS = List.of(Layer.FOREGROUND, Layer.BACKGROUND);

    private SpokenChart() {
    }

    /** The same chart with other words; its data stay as files have them. */
    static Chart of(Chart made) {
        JFreeChart chart = made.chart();
        say(chart.getTitle());
        for (int i = 0; i < chart.getSubtitleCount(); i++) {
            if (chart.getSubtitle(i) instanceof TextTitle title) {
                say(title);
            } else if (chart.getSubtitle(i) instanceof LegendTitle legend) {
                say(legend);
            }
        }
        if (chart.getPlot() instanceof CategoryPlot plot) {
            say(plot);
        } else if (chart.getPlot() instanceof XYPlot plot) {
            say(plot);
        }
        return new Chart(made.name(), Words.say(made.title()), chart, Words.say(made.textAlternative()), made.data(),
                made.preferredHeight(), made.leastHeight(), made.subjects());
    }

    private static void say(TextTitle title) {
        if (title != null) {
            title.setText(Words.say(title.getText()));
        }
    }

    private static void say(LegendTitle legend) {
        LegendItemSource[] sources = legend.getSources();
        legend.setSources(new LegendItemSource[] {() -> {
            LegendItemCollection all = new LegendItemCollection();
            for (LegendItemSource source : sources) {
                LegendItemCollection items = source.getLegendItems();
                for (int i = 0; i < items.getItemCount(); i++) {
                    all.add(said(items.get(i)));
                }
            }
            return all;
        }});
    }

    private static LegendItem said(LegendItem item) {
        LegendItem said = new LegendItem(Words.say(item.getLabel()), item.getDescription(), item.getToolTipText(), item.getURLText(),
                item.isShapeVisible(), item.getShape(), item.isShapeFilled(), item.getFillPaint(), item.isShapeOutlineVisible(),
                item.getOutlinePaint(), item.getOutlineStroke(), item.isLineVisible(), item.getLine(), item.getLineStroke(),
                item.getLinePaint());
        // By its key a click on it is told, by its paint that it is hidden.
        said.setSeriesKey(item.getSeriesKey());
        said.setLabelPaint(item.getLabelPaint());
        return said;
    }

    private static void say(CategoryPlot plot) {
        CategoryAxis axis = plot.getDomainAxis();
        if (axis.getClass() == CategoryAxis.class) {
            plot.setDomainAxis(new SpokenCategoryAxis(axis));
        }
        say(plot.getDomainAxis());
        for (int i = 0; i < plot.getRangeAxisCount(); i++) {
            say(plot.getRangeAxis(i));
        }
        for (int i = 0; i < plot.getRendererCount(); i++) {
            LAYERS.forEach(l -> say(plot.getDomainMarkers(l)));
            LAYERS.forEach(l -> say(plot.getRangeMarkers(l)));
            sayFigures(plot.getRenderer(i));
        }
        plot.getAnnotations().forEach(SpokenChart::sayText);
    }

    private static void say(XYPlot plot) {
        if (plot instanceof CombinedDomainXYPlot several) {
            several.getSubplots().forEach(p -> say((XYPlot) p));
        }
        for (int i = 0; i < plot.getDomainAxisCount(); i++) {
            if (plot.getDomainAxis(i) instanceof SymbolAxis symbols) {
                plot.setDomainAxis(i, new SpokenSymbolAxis(symbols));
            }
            say(plot.getDomainAxis(i));
        }
        for (int i = 0; i < plot.getRangeAxisCount(); i++) {
            say(plot.getRangeAxis(i));
        }
        LAYERS.forEach(l -> say(plot.getDomainMarkers(l)));
        LAYERS.forEach(l -> say(plot.getRangeMarkers(l)));
        plot.getAnnotations().forEach(SpokenChart::sayText);
        for (int i = 0; i < plot.getRendererCount(); i++) {
            sayFirstLabels(plot.getRenderer(i));
        }
    }

    /** Charts of lines label the points of a series of its own. */
    private static void sayFirstLabels(XYItemRenderer renderer) {
        XYItemLabelGenerator made = renderer == null ? null : renderer.getSeriesItemLabelGenerator(0);
        if (made != null) {
            renderer.setSeriesItemLabelGenerator(0, (data, series, item) -> Words.say(made.generateLabel(data, series, item)));
        }
    }

    private static void say(Axis axis) {
        if (axis == null) {
            return;
        }
        axis.setLabel(Words.say(axis.getLabel()));
        if (axis instanceof NumberAxis numbers && numbers.getNumberFormatOverride() != null) {
            numbers.setNumberFormatOverride(new LocalTickFormat(numbers.getNumberFormatOverride()));
        }
    }

    private static void say(Iterable<?> markers) {
        if (markers != null) {
            markers.forEach(m -> ((Marker) m).setLabel(Words.say(((Marker) m).getLabel())));
        }
    }

    private static void sayText(Object annotation) {
        if (annotation instanceof TextAnnotation text) {
            text.setText(Words.say(text.getText()));
        } else if (annotation instanceof XYTextAnnotation text) {
            text.setText(Words.say(text.getText()));
        }
    }

    private static void sayFigures(CategoryItemRenderer renderer) {
        if (renderer != null && renderer.getDefaultItemLabelGenerator() != null) {
            renderer.setDefaultItemLabelGenerator(new SpokenItemLabels(renderer.getDefaultItemLabelGenerator()));
        }
    }
}

package org.amberyard.charts;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Color;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.amberyard.core.money.CostCategory;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Colours stay apart for eyes without one kind of cone: full dichromacy by the matrices of Machado, Oliveira and Fernandes
 * (2009), from memory, applied to linear light; distance in CIE L*a*b*.
 */
class ChartThemeTest {
    private static final double LEAST_DISTANCE = 11;
    private static final double[][] NORMAL = {{1, 0, 0}, {0, 1, 0}, {0, 0, 1}};
    private static final double[][] PROTAN = {{0.152286, 1.052583, -0.204868}, {0.114503, 0.786281, 0.099216},
        {-0.003882, -0.048116, 1.051998}};
    private static final double[][] DEUTAN = {{0.367322, 0.860646, -0.227968}, {0.280085, 0.672501, 0.047413},
        {-0.011820, 0.042940, 0.968881}};
    private static final double[][] TRITAN = {{1.255528, -0.076749, -0.178779}, {-0.078411, 0.930809, 0.147602},
        {0.004733, 0.691367, 0.303900}};

    static Stream<List<Color>> palettes() {
        List<List<Color>> palettes = new ArrayList<>();
        for (ChartTheme theme : List.of(ChartTheme.light(), ChartTheme.dark(), ChartTheme.strongLight(), ChartTheme.strongDark())) {
            palettes.add(Stream.concat(Stream.of(CostCategory.Group.values()).map(theme::group),
                    Stream.of(theme.background())).toList());
            palettes.add(Stream.concat(IntStream.range(0, 5).mapToObj(theme::plan), Stream.of(theme.background())).toList());
            palettes.add(List.of(theme.passes(false), theme.passes(true), theme.fails(false), theme.fails(true),
                    theme.background()));
        }
        return palettes.stream();
    }

    @ParameterizedTest
    @MethodSource("palettes")
    void anyTwoColoursOfAPaletteStayApart(List<Color> palette) {
        for (double[][] eye : List.of(NORMAL, PROTAN, DEUTAN, TRITAN)) {
            for (int a = 0; a < palette.size(); a++) {
                for (int b = a + 1; b < palette.size(); b++) {
                    double distance = distance(lab(palette.get(a), eye), lab(palette.get(b), eye));
                    assertTrue(distance >= LEAST_DISTANCE, palette.get(a) + " and " + palette.get(b) + ": " + distance);
                }
            }
        }
    }

    private static double[] lab(Color colour, double[][] eye) {
        double[] light = {linear(colour.getRed()), linear(colour.getGreen()), linear(colour.getBlue())};
        double[] seen = times(eye, light);
        double[] xyz = times(new double[][] {{0.4124 / 0.9505, 0.3576 / 0.9505, 0.1805 / 0.9505},
            {0.2126, 0.7152, 0.0722}, {0.0193 / 1.089, 0.1192 / 1.089, 0.9505 / 1.089}}, seen);
        double x = root(xyz[0]);
        double y = root(xyz[1]);
        double z = root(xyz[2]);
        return new double[] {116 * y - 16, 500 * (x - y), 200 * (y - z)};
    }

    private static double linear(int channel) {
        double value = channel / 255.0;
        return value <= 0.04045 ? value / 12.92 : Math.pow((value + 0.055) / 1.055, 2.4);
    }

    private static double root(double value) {
        return value > 0.008856 ? Math.cbrt(value) : 7.787 * Math.max(0, value) + 16.0 / 116;
    }

    private static double[] times(double[][] matrix, double[] vector) {
        double[] product = new double[3];
        for (int i = 0; i < 3; i++) {
            for (int j = 0; j < 3; j++) {
                product[i] += matrix[i][j] * vector[j];
            }
        }
        return product;
    }

    private static double distance(double[] a, double[] b) {
        return Math.sqrt(Math.pow(a[0] - b[0], 2) + Math.pow(a[1] - b[1], 2) + Math.pow(a[2] - b[2], 2));
    }
}

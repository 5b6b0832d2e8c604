package org.amberyard.core.trace;

import java.util.Arrays;
import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * The usual error of logged figures, found from the figures themselves.
 *
 * <p>The third difference of four points in a row hardly feels how a bus moves but has twenty times the variance of their
 * errors (1, 3, 3, 1 squared). The median of its size, over 0.6745, is the standard deviation of normal errors and is not
 * upset by a few gross ones. Common practice, no source.
 */
final class Scatter {
    private static final double THIRD_DIFFERENCE = Math.sqrt(20);
    private static final double MEDIAN_OF_NORMAL = 0.6745;
    /** Longest time over which a bus moves so evenly that what is left is error, s. */
    private static final double LONGEST_S = 10;

    private Scatter() {
    }

    /** Standard error of a position along one axis, m; 0 when no four points lie close enough in time. */
    static double positionM(List<TrackPoint> points) {
        double metresPerDegree = Math.toRadians(GreatCircle.RADIUS_M);
        double shrink = points.isEmpty() ? 1 : Math.cos(Math.toRadians(points.get(0).latitudeDeg()));
        double[] north = sizes(points, p -> metresPerDegree * p.latitudeDeg());
        double[] east = sizes(points, p -> metresPerDegree * shrink * p.longitudeDeg());
        double[] both = Arrays.copyOf(north, north.length + east.length);
        System.arraycopy(east, 0, both, north.length, east.length);
        // Receivers that hold their position at stops repeat it exactly; that says nothing of their error.
        return of(Arrays.stream(both).filter(size -> size > 0).toArray());
    }

    /** Standard error of figures that follow each other evenly, in their own unit; 0 for fewer than four. */
    static double even(double[] figures) {
        double[] sizes = new double[Math.max(0, figures.length - 3)];
        for (int i = 0; i < sizes.length; i++) {
            sizes[i] = thirdDifference(figures[i], figures[i + 1], figures[i + 2], figures[i + 3]);
        }
        return of(sizes);
    }

    private static double thirdDifference(double a, double b, double c, double d) {
        return Math.abs(d - 3 * c + 3 * b - a);
    }

    /** Standard error of a speed, m/s; 0 when no four points lie close enough in time. */
    static double speedMps(List<TrackPoint> points) {
        return of(sizes(points, TrackPoint::speedMps));
    }

    private static double[] sizes(List<TrackPoint> points, ToDoubleFunction<TrackPoint> figure) {
        double[] sizes = new double[Math.max(0, points.size() - 3)];
        int count = 0;
        for (int i = 0; i + 3 < points.size(); i++) {
            if (points.get(i + 3).timeS() - points.get(i).timeS() <= LONGEST_S) {
                double[] y = points.subList(i, i + 4).stream().mapToDouble(figure).toArray();
                sizes[count++] = thirdDifference(y[0], y[1], y[2], y[3]);
            }
        }
        return Arrays.copyOf(sizes, count);
    }

    private static double of(double[] sizes) {
        if (sizes.length == 0) {
            return 0;
        }
        Arrays.sort(sizes);
        return sizes[sizes.length / 2] / MEDIAN_OF_NORMAL / THIRD_DIFFERENCE;
    }
}

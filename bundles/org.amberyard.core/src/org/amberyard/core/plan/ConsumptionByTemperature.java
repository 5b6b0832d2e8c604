package org.amberyard.core.plan;

import java.util.List;
import java.util.stream.IntStream;
import org.amberyard.core.duty.Climate;
import org.amberyard.core.duty.EnergyUse;
import org.amberyard.core.duty.RouteDuty;
import org.amberyard.core.duty.WeatherDay;

/**
 * What a vehicle type uses on a route by outside temperature, on sunless days of one temperature.
 *
 * @param points by rising temperature; none when the route is not driven
 */
public record ConsumptionByTemperature(List<Point> points) {
    private static final int COLDEST_C = -30;
    private static final int WARMEST_C = 40;
    private static final int STEP_K = 2;

    /**
     * One temperature.
     *
     * @param airC outside air, °C
     * @param use use of a day
     */
    public record Point(double airC, EnergyUse use) {

        /** Net battery energy per distance, kWh/km. */
        public double kwhPerKm() {
            return use.batteryKwh() / use.km();
        }
    }

    public ConsumptionByTemperature {
        points = List.copyOf(points);
    }

    /** The curve of a route with an electric type whose body fits it. */
    public static ConsumptionByTemperature of(StudyResult result, int route, int type) {
        RouteDuty duty = result.duty().duty(route, type);
        return IntStream.range(0, Climate.MONTHS).filter(m -> duty.drivenOn(m, false) || duty.drivenOn(m, true)).boxed()
                .findFirst()
                .map(month -> new ConsumptionByTemperature(IntStream.rangeClosed(0, (WARMEST_C - COLDEST_C) / STEP_K)
                        .mapToObj(i -> point(duty, month, COLDEST_C + i * STEP_K)).toList()))
                .orElse(new ConsumptionByTemperature(List.of()));
    }

    private static Point point(RouteDuty duty, int month, double airC) {
        return new Point(airC, duty.dayUse(month, !duty.drivenOn(month, false), WeatherDay.steady(airC)));
    }
}

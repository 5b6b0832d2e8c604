package org.amberyard.core.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.amberyard.core.battery.BatterySpec;
import org.amberyard.core.duty.BlockCheck;
import org.amberyard.core.duty.Climate;
import org.amberyard.core.duty.DayBlock;
import org.amberyard.core.duty.RouteDuty;
import org.amberyard.core.duty.WeatherDay;

/**
 * An electric type on a route in one of four telling weathers, on a school day.
 *
 * @param route place of the route
 * @param type place of the vehicle type
 * @param kind the weather
 * @param month month that it is taken from, 0 for January
 * @param meanAirC mean outside air of the day, °C
 * @param day the bus's day
 * @param whenNew outcome of a week of such days with a new pack, under the study's charging habit
 * @param whenAged the same with an aged pack
 */
public record RouteWeather(int route, int type, Kind kind, int month, double meanAirC, DayBlock day,
        BlockCheck.Outcome whenNew, BlockCheck.Outcome whenAged) {
    private static final double COMFORT_C = 18;

    /** Telling weathers. */
    public enum Kind {
        /** The normal day nearest to 18 °C. */
        MILD("mild"),
        /** The hottest day on which buses ran. */
        HOT("hot"),
        /** The normal day of the coldest month. */
        COLD("cold"),
        /** The coldest day on which buses ran. */
        DESIGN_COLD("design-cold");

        private final String label;

        Kind(String label) {
            this.label = label;
        }

        /** Words for tables. */
        public String label() {
            return label;
        }

        private DayKind day() {
            return switch (this) {
                case MILD, COLD -> DayKind.NORMAL;
                case HOT -> DayKind.HOTTEST;
                case DESIGN_COLD -> DayKind.COLDEST;
            };
        }

        /** What makes a day of this kind the one; less is better. */
        private double distance(WeatherDay day) {
            return switch (this) {
                case MILD -> Math.abs(day.meanAirC() - COMFORT_C);
                case HOT -> -day.meanAirC();
                case COLD, DESIGN_COLD -> day.meanAirC();
            };
        }
    }

    /** The four weathers of a fit; none when the route is not driven on school days. */
    public static List<RouteWeather> of(StudyResult result, RouteFit fit) {
        RouteDuty duty = result.duty().duty(fit.route(), fit.type());
        List<Integer> months = IntStream.range(0, Climate.MONTHS).filter(m -> duty.drivenOn(m, false)).boxed().toList();
        List<RouteWeather> weathers = new ArrayList<>();
        if (!months.isEmpty()) {
            for (Kind kind : Kind.values()) {
                weathers.add(of(result, fit, duty, months, kind));
            }
        }
        return weathers;
    }

    private static RouteWeather of(StudyResult result, RouteFit fit, RouteDuty duty, List<Integer> months, Kind kind) {
        StudyInput study = result.input();
        List<Climate.MonthWeather> climate = study.duty().climate().months();
        int month = months.stream().min(Comparator.comparingDouble(m -> kind.distance(kind.day().in(climate.get(m)))))
                .orElseThrow();
        WeatherDay weather = kind.day().in(climate.get(month));
        DayBlock day = duty.block(month, false, weather, study.duty().habit());
        BatterySpec battery = study.types().get(fit.type()).electric().orElseThrow().battery();
        BlockCheck check = RouteFitting.check(study, fit.batteryKw(), study.middayCharging());
        return new RouteWeather(fit.route(), fit.type(), kind, month, weather.meanAirC(), day,
                check.of(day, battery, 1), check.of(day, battery, fit.agedHealth()));
    }
}

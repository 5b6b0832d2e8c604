package org.amberyard.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.amberyard.core.duty.ClearSky;
import org.amberyard.core.duty.Climate;
import org.amberyard.core.duty.EnergyModel;
import org.amberyard.core.duty.RouteInput;
import org.amberyard.core.duty.RunInput;
import org.amberyard.core.duty.WeatherDay;
import org.amberyard.model.common.Month;
import org.amberyard.model.routes.Layover;
import org.amberyard.model.routes.Route;
import org.amberyard.model.routes.Run;
import org.amberyard.model.routes.RunKind;
import org.amberyard.model.site.MonthClimate;
import org.amberyard.model.site.ServiceCalendar;
import org.amberyard.model.site.Site;

/** Compiles the site's climate, calendars and routes. */
final class RouteCompiler {
    private RouteCompiler() {
    }

    static Climate climate(Site site) {
        List<Climate.MonthWeather> months = new ArrayList<>();
        for (Month month : Month.values()) {
            MonthClimate row = site.getClimate().stream().filter(c -> c.getMonth() == month).findFirst()
                    .orElseThrow(() -> new IllegalArgumentException("The climate lacks " + month.getLiteral()));
            months.add(weather(site, row));
        }
        return new Climate(site.getElevationM(), months);
    }

    /**
     * The hottest day is given by its high alone; its low is taken at the month's usual daily span below it. The sun shines as
     * the month's share says on the normal day, not at all on the coldest and from a clear sky on the hottest.
     */
    private static Climate.MonthWeather weather(Site site, MonthClimate row) {
        double span = row.getMeanHighC() - row.getMeanLowC();
        return new Climate.MonthWeather(day(site, row, row.getMeanLowC(), row.getMeanHighC(), row.getSunShare()),
                day(site, row, row.getColdestLowC(), row.getColdestHighC(), 0),
                day(site, row, row.getHottestHighC() - span, row.getHottestHighC(), 1));
    }

    private static WeatherDay day(Site site, MonthClimate row, double lowC, double highC, double sunShare) {
        int month = row.getMonth().ordinal();
        return WeatherDay.ofExtremes(lowC, highC, ClearSky.hourlyWPerM2(site.getLatitudeDeg(), month, sunShare));
    }

    static RouteInput route(Route route) {
        OptionalInt riders = route.getRiders() > 0 ? OptionalInt.of(route.getRiders()) : OptionalInt.empty();
        return new RouteInput(route.getName(), route.getBodyType().getLiteral(), riders,
                route.getRuns().stream().map(RouteCompiler::run).toList(), energyModel(route.getEnergyModel()));
    }

    private static EnergyModel energyModel(org.amberyard.model.routes.EnergyModel model) {
        return switch (model) {
            case PHYSICS -> EnergyModel.PHYSICS;
            case CURVE -> EnergyModel.CURVE;
        };
    }

    private static RunInput run(Run run) {
        return new RunInput(run.getName(), run.getDepartureMin(), run.getDurationMin(), run.getDistanceKm(),
                run.getStops(), run.getDwellS(), run.getMeanRiders(), run.getTopSpeedKmh(), run.getClimbM(),
                run.getLayover() == Layover.YARD, run.getKind() == RunKind.SUMMER, days(run.getCalendar()),
                Optional.ofNullable(run.getTrace()).map(TraceCompiler::compile));
    }

    private static List<Integer> days(ServiceCalendar c) {
        return List.of(c.getJanuaryDays(), c.getFebruaryDays(), c.getMarchDays(), c.getAprilDays(), c.getMayDays(),
                c.getJuneDays(), c.getJulyDays(), c.getAugustDays(), c.getSeptemberDays(), c.getOctoberDays(),
                c.getNovemberDays(), c.getDecemberDays());
    }
}

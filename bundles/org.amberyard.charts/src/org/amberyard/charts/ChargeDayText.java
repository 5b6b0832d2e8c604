package org.amberyard.charts;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.amberyard.core.duty.BlockCheck.Moment;
import org.amberyard.core.plan.BusDay;
import org.amberyard.core.plan.StudyInput;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.core.units.MonthNames;
import org.amberyard.core.units.Unit;
import org.amberyard.core.units.UnitSystem;

/** A bus's day in words and figures. */
final class ChargeDayText {
    private final StudyInput study;
    private final BusDay day;
    private final UnitSystem system;

    ChargeDayText(StudyResult result, BusDay day, UnitSystem system) {
        this.study = result.input();
        this.day = day;
        this.system = system;
    }

    /** For example {@code coldest day of January 2034}. */
    static String date(StudyInput study, BusDay.Asked asked) {
        return asked.kind().label() + " of " + MonthNames.full(asked.month()) + " " + (study.baseYear() + asked.year())
                + (asked.extendedYear() ? ", extended year" : "");
    }

    private String heading() {
        return "Bus " + study.buses().get(day.asked().place()).name() + ", " + study.types().get(day.type()).name() + ", "
                + date(study, day.asked());
    }

    /** The answer: how low the charge falls, and how far that is from the reserve. */
    String answer() {
        int lowest = day.moments().indexOf(lowest());
        return heading() + ": lowest " + Figures.wholePercent(lowest().chargeShare()) + " at the " + event(lowest) + ", "
                + margin();
    }

    /** Route, state of the pack and how it is charged. */
    String caption() {
        return "route " + study.duty().routes().get(day.route()).name() + "; pack at " + Figures.wholePercent(day.health())
                + " of its first capacity, " + Figures.whole(day.usableKwh()) + " kWh usable; "
                + (study.middayCharging() ? "charged overnight and between runs at the yard" : "charged overnight only");
    }

    /** The moment of least charge; of equals the first. */
    Moment lowest() {
        return day.moments().stream().min(Comparator.comparing(Moment::chargeShare)).orElseThrow();
    }

    /** What happens at a moment, by its place in the day. */
    String event(int moment) {
        if (moment == day.moments().size() - 1) {
            return "next departure";
        }
        return (moment % 2 == 0 ? "departure of " : "end of ") + day.block().legs().get(moment / 2).name();
    }

    String sentences() {
        return answer() + "; " + caption() + ". " + week();
    }

    /** The least distance above what must be left, at any moment of the day. */
    private String margin() {
        double share = day.moments().stream().mapToDouble(m -> m.chargeShare() - m.floorShare()).min().orElseThrow();
        double perShareKm = day.block().batteryKwh() > 0 ? day.usableKwh() * day.block().km() / day.block().batteryKwh() : 0;
        return distance(share * perShareKm) + (share < 0 ? " below" : " above") + " the reserve";
    }

    private String distance(double km) {
        return Figures.size(Unit.KILOMETRE.show(km, system)) + " " + Unit.KILOMETRE.symbol(system, study.currency());
    }

    private String week() {
        if (!day.outcome().passes()) {
            return "A week of such days fails on day " + day.outcome().days() + ", " + distance(day.outcome().marginKm())
                    + " below the reserve.";
        }
        return day.outcome().refilled() ? "Every night fills the pack."
                : "A night does not fill the pack; over a week of such days the least margin is "
                        + distance(day.outcome().marginKm()) + ".";
    }

    ChartData data() {
        List<List<Object>> rows = new ArrayList<>();
        IntStream.range(0, day.moments().size()).forEach(i -> rows.add(row(i, day.moments().get(i))));
        return new ChartData(columns(), rows);
    }

    static List<String> columns() {
        return List.of("Time (h:mm)", "Event", "Charge (%)", "Must be left (%)", "Charge (kWh)");
    }

    private List<Object> row(int place, Moment moment) {
        return List.of(ClockTickFormat.clock(moment.minute()), event(place), 100 * moment.chargeShare(),
                100 * moment.floorShare(), moment.chargeShare() * day.usableKwh());
    }
}

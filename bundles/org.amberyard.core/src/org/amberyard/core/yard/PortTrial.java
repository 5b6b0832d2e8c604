package org.amberyard.core.yard;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Collectors;
import org.amberyard.core.charging.ChargeRule;
import org.amberyard.core.charging.PlugIn;
import org.amberyard.core.charging.PlugWay;
import org.amberyard.core.charging.PortUnit;
import org.amberyard.core.depot.Port;

/**
 * Tells which ports have every bus ready in every year of a plan under a policy. Stretches that come again, in a year or from year
 * to year, are looked at once, those that ask for most power first, and before them the one at which ports failed last; so most
 * ports that do not serve fail at the first look. With least cost it tells whether buses can be ready at full power;
 * a limit of the
 * site is not looked at. Safe for use from several threads.
 */
final class PortTrial {
    private final List<YardInput> years;
    private final ChargeRule rule;
    private final NeedsMemory needs;
    private final Map<Kind, Asked> byKind = new ConcurrentHashMap<>();

    /**
     * @param years the yard in each year
     * @param rule policy
     * @param needs what is known of the needs of the buses
     */
    PortTrial(List<YardInput> years, ChargeRule rule, NeedsMemory needs) {
        this.needs = needs;
        this.years = years.stream().filter(y -> !y.buses().isEmpty()).map(y -> y.with(rule)).distinct().toList();
        this.rule = rule;
    }

    /** Ways to charge a stretch with the energy and the mean power that its buses ask for in the first. */
    private record Day(List<PlugWay> ways, double kwh, double evenKw) {
        static Day of(List<PlugWay> ways) {
            List<PlugIn> plugIns = ways.get(0).stretch().plugIns();
            return new Day(ways, plugIns.stream().mapToDouble(PlugIn::batteryKwh).sum(),
                    plugIns.stream().mapToDouble(PlugIn::evenKw).sum());
        }

        double hours() {
            return ways.get(0).stretch().grid().lengthMin() / 60;
        }
    }

    /** What decides what buses ask of ports: the power to count on, and in which years each has a plug of its own. */
    private record Kind(Set<Port> types, List<Boolean> ownPlugs) {
    }

    private Kind kind(List<PortUnit> ports) {
        return new Kind(ports.stream().map(PortUnit::port).collect(Collectors.toSet()),
                years.stream().map(year -> year.withPorts(ports).ownPlugs()).toList());
    }

    /** What the buses ask of some ports. */
    private static final class Asked {
        private final List<Day> days;
        private volatile Day lastFailed;

        Asked(List<Day> days) {
            this.days = days;
            this.lastFailed = days.get(0);
        }
    }

    boolean serves(List<PortUnit> ports) {
        Asked asked = byKind.computeIfAbsent(kind(ports), kind -> asked(ports));
        double batteryKw = ports.stream().mapToDouble(u -> u.port().powerKw() * u.port().efficiency()).sum();
        Day first = asked.lastFailed;
        if (!serves(ports, batteryKw, first)) {
            return false;
        }
        for (Day day : asked.days) {
            if (day != first && !serves(ports, batteryKw, day)) {
                asked.lastFailed = day;
                return false;
            }
        }
        return true;
    }

    /** Ports that do not bring the energy at full power all day need no closer look. */
    private boolean serves(List<PortUnit> ports, double batteryKw, Day day) {
        return day.kwh <= batteryKw * day.hours()
                && day.ways.stream().anyMatch(way -> way.charging(ports, rule).served());
    }

    private Asked asked(List<PortUnit> ports) {
        Set<List<PlugWay>> stretches = new LinkedHashSet<>();
        for (YardInput year : years) {
            YardInput yard = year.withPorts(ports);
            new StretchPlanner(yard, new YardNeeds(yard, needs)).all()
                    .forEach(ways -> stretches.add(ways.stream().map(PlugWay::once).toList()));
        }
        List<Day> days = new ArrayList<>(stretches.stream().map(Day::of).toList());
        days.sort(Comparator.comparingDouble(Day::evenKw).reversed());
        return new Asked(days);
    }
}

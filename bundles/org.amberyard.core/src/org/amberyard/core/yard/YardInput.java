package org.amberyard.core.yard;

import java.util.List;
import java.util.Objects;
import org.amberyard.core.charging.ChargePolicy;
import org.amberyard.core.charging.ChargeRule;
import org.amberyard.core.charging.PortUnit;

/**
 * The yard in one year: what charges where, by which rule, at which prices.
 *
 * @param buses electric buses
 * @param ports ports; at least one when there are buses
 * @param rule charging policy
 * @param midday true when buses may be plugged in between runs at the yard
 * @param reserveShare share of the usable energy that planning keeps
 * @param metering tariff and meter
 * @param contractYear year of the contract with the supplier, 1 for the first
 * @param demandIndex rise of demand prices over rise of energy prices since the base date; decides what is worth shifting
 * @param building load of the building
 * @param calendar days of the year
 * @param stepMin length of a step, minutes; divides the hour
 * @param swaps when a person is there to move plugs
 * @param siteLimitKw demand of charging that managed charging keeps to, kW; infinite where nothing limits it
 */
public record YardInput(List<YardBus> buses, List<PortUnit> ports, ChargeRule rule, boolean midday, double reserveShare,
        Metering metering, int contractYear, double demandIndex, BuildingLoad building, YardCalendar calendar, int stepMin,
        SwapTimes swaps, double siteLimitKw) {

    public YardInput {
        buses = List.copyOf(buses);
        ports = List.copyOf(ports);
    }

    /** Of what is quick to look at. */
    @Override
    public int hashCode() {
        return Objects.hash(buses, ports, rule, contractYear, demandIndex);
    }

    /** The same under another charging policy, with the set time and all else of its rule. */
    public YardInput under(ChargePolicy policy) {
        return with(rule.with(policy));
    }

    /** The same under another charging rule. */
    public YardInput with(ChargeRule other) {
        return new YardInput(buses, ports, other, midday, reserveShare, metering, contractYear, demandIndex, building, calendar,
                stepMin, swaps, siteLimitKw);
    }

    /** The same with another rise of demand prices over that of energy prices. */
    public YardInput at(double otherDemandIndex) {
        return new YardInput(buses, ports, rule, midday, reserveShare, metering, contractYear, otherDemandIndex, building, calendar,
                stepMin, swaps, siteLimitKw);
    }

    /** The same with other ports. */
    public YardInput withPorts(List<PortUnit> others) {
        return new YardInput(buses, others, rule, midday, reserveShare, metering, contractYear, demandIndex, building, calendar,
                stepMin, swaps, siteLimitKw);
    }

    /** The same with ports that cost nothing. */
    YardInput unpriced() {
        return withPorts(ports.stream().map(u -> new PortUnit(u.port().unpriced(), u.plugs())).toList());
    }

    /** The same without buses, with other ports. */
    YardInput atRest(List<PortUnit> others) {
        return new YardInput(List.of(), others, rule.with(ChargePolicy.AT_ONCE), midday, reserveShare, metering, contractYear,
                demandIndex, building, calendar, stepMin, swaps, siteLimitKw);
    }

    /** The same kept below a demand of charging, heat and standby, kW. */
    public YardInput within(double limitKw) {
        return new YardInput(buses, ports, rule, midday, reserveShare, metering, contractYear, demandIndex, building, calendar,
                stepMin, swaps, limitKw);
    }

    /** True when every bus has a plug of its own. */
    boolean ownPlugs() {
        int plugs = 0;
        for (PortUnit unit : ports) {
            plugs += unit.plugs();
        }
        return plugs >= buses.size();
    }

    /** Power that the ports draw at all hours, kW. */
    public double standbyKw() {
        return ports.stream().mapToDouble(u -> u.port().standbyW()).sum() / 1000;
    }

    /** Power of all ports, kW. */
    public double connectedKw() {
        return ports.stream().mapToDouble(u -> u.port().powerKw()).sum();
    }
}

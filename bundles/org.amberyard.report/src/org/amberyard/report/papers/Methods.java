package org.amberyard.report.papers;

import java.util.ArrayList;
import java.util.List;
import org.amberyard.report.document.Block;
import org.amberyard.report.document.Section;

/** How everything is computed, in the words of the trade. */
final class Methods {
    private static final List<Section> OF_BUSES = List.of(
            said("Method", """
                    Inputs are compiled once into a study; plans are evaluated year by year; every amount can be traced to its quantity, \
                    price and source (“why” of the program). The same study gives the same figures on any machine."""),
            said("Energy of a route", """
                    Each run is driven second by second: rolling resistance, air drag by air density, climb, inertia, driveline losses by \
                    load, braking that is recovered up to the limits of motor, speed and cold pack, auxiliaries, heat and cooling of cabin \
                    and pack in the weather of each month. A month's days stand in order from the coldest over the normal to the hottest \
                    operated day. Measurements, where given, calibrate the model."""),
            said("Can the bus do the route", """
                    A week of the worst operated days is walked run by run, with a new pack and with one at the end of its service, with \
                    and without charging between runs; what a cold pack does not give counts as not there, and a reserve is kept. Failing \
                    days of a year are counted by driving them."""),
            said("Packs", """
                    Capacity falls by calendar age and by full cycles at the depth, rate and temperature at which the bus is used. A pack \
                    is replaced at its end-of-life capacity, cycle limit or age, under the maker's warranty where that holds; where \
                    another pack is dearer over the years left than the next bus, the bus retires instead."""));
    private static final List<Section> OF_THE_YARD = List.of(
            said("Charging and the electric bill", """
                    Every month is planned in quarter hours on its coldest, hottest and other days with nights, weekends and free days: \
                    who stands at which plug when, moves of plugs, limits of service and port. Charging is at once, at a set time, \
                    spread, or at least cost, which is solved exactly. The bill follows the tariff line by line with demand windows, \
                    ratchets, riders and taxes."""),
            said("Upkeep", """
                    Tasks fall due by miles, months and hours and cost parts and labour; failures are expected by a Weibull law of \
                    distance. Work orders calibrate a vehicle type as a whole."""));
    private static final List<Section> OF_AWARDS_AND_AIR = List.of(
            said("Funding", """
                    Programmes are dated data: what they pay for, limits, match, exclusions and conditions. They are applied to each \
                    purchase by priority, and never pay more than its cost. Awards that come late, are paid back or lower a tax are \
                    placed in the year in which the money moves."""),
            said("Air", """
                    Exhaust by model year of the engine, miles, idling and fuel; power plants for the energy at the meter with line \
                    losses; dust of brakes by the heat of friction, of tyres by wear. Lifetime reductions end in the year in which the \
                    old bus would have gone. A factor that is not known leaves every sum that holds it unknown."""));

    private Methods() {
    }

    static List<Section> sections(PaperInput in) {
        List<Section> sections = new ArrayList<>(OF_BUSES);
        sections.addAll(OF_THE_YARD);
        sections.add(money(in));
        sections.addAll(OF_AWARDS_AND_AIR);
        return sections;
    }

    private static Section said(String heading, String words) {
        return Section.of(heading, new Block.Paragraph(words));
    }

    private static Section money(PaperInput in) {
        return said("Money", in.moneyWords() + " Costs are quantities at prices, each price along its own path. Purchases fall at the "
                + "start of a year, running costs " + (in.study().money().midYear() ? "in its middle" : "at its end")
                + ". What is left at the end is credited in present cost and not in payback. Loans, leases and bonds stand beside the "
                + "costs, never in them.");
    }
}

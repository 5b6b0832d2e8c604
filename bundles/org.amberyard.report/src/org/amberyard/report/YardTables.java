package org.amberyard.report;

import org.amberyard.core.depot.ServiceYear;
import org.amberyard.core.units.Unit;
import org.amberyard.report.ResultRows.OfYear;

/** Table of the load on the electric service. */
final class YardTables {
    private YardTables() {
    }

    static TableDefinition<OfYear> serviceByYear() {
        return new TableDefinition<>("service_by_year", "Electric service by year", OfYear::all)
                .text("plan", "Plan", "Name of the plan.", r -> r.plan().name())
                .year("year", "Year", "Year.", OfYear::calendarYear).heads()
                .count("ports", "Ports", "Number of ports.", r -> service(r).ports())
                .number("connected_power", "Connected power", Unit.KILOWATT, "All ports at full power.",
                        r -> service(r).connectedKw())
                .number("charging_demand", "Demand of charging", Unit.KILOWATT,
                        "Highest demand of charging, heat and standby as planned; counts for sizing only under a listed "
                                + "load-management system.",
                        r -> service(r).demandKw())
                .number("connected_load", "Connected load", Unit.KILOVOLTAMPERE,
                        "All ports at full power on top of the building's peak.", r -> service(r).connectedKva())
                .number("planned_load", "Load as planned", Unit.KILOVOLTAMPERE,
                        "Highest demand of charging as planned and the building together.", r -> service(r).demandKva())
                .number("transformer", "Transformer", Unit.KILOVOLTAMPERE, "Rating of the transformer.",
                        r -> service(r).transformerKva())
                .number("breaker", "Main breaker, continuous", Unit.KILOVOLTAMPERE,
                        "What the main breaker carries continuously.", r -> service(r).breakerContinuousKva())
                .text("connected_exceeds", "Connected load exceeds",
                        "Whether all ports at full power overload the service: yes or no.",
                        r -> yes(service(r).connectedExceeds()))
                .text("planned_exceeds", "Load as planned exceeds",
                        "Whether even charging as planned overloads the service: yes or no.",
                        r -> yes(service(r).demandExceeds()));
    }

    private static ServiceYear service(OfYear row) {
        return row.plan().service().get(row.year());
    }

    private static String yes(boolean holds) {
        return holds ? "yes" : "no";
    }
}

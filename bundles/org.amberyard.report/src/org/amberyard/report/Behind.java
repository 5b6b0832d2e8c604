package org.amberyard.report;

import java.util.Arrays;
import java.util.Optional;
import java.util.Set;
import org.amberyard.core.why.Derivation;
import org.amberyard.core.why.InputRef;

/** Kinds of elements on whose inputs a figure rests, and the columns of tables that name one. */
enum Behind {
    ROUTE("Route", "Route", Set.of("route", "other_route")),
    TYPE("VehicleType", "Vehicle type", Set.of("type")),
    BUS("Bus", "Bus", Set.of("place", "unit", "bus")),
    TRIP("Trip", "Trip", Set.of("trip")),
    PORT("PortType", "Port type", Set.of("port")),
    TARIFF("Tariff", "Tariff", Set.of("tariff")),
    PROGRAMME("Programme", "Programme", Set.of("programme")),
    PLAN("Plan", "Plan", Set.of("plan")),
    SITE("Site", "Site and climate", Set.of()),
    CALENDAR("ServiceCalendar", "Service calendar", Set.of()),
    DEPOT("Depot", "Depot", Set.of()),
    SETTINGS("Settings", "Settings", Set.of());

    private final String kind;
    private final String label;
    private final Set<String> columns;

    Behind(String kind, String label, Set<String> columns) {
        this.kind = kind;
        this.label = label;
        this.columns = columns;
    }

    /** The element that a cell names; empty for a column that names none. */
    static Optional<Derivation> ofColumn(String column, Object cell) {
        return Arrays.stream(values()).filter(b -> cell instanceof String && b.columns.contains(column)).findFirst()
                .map(b -> Derivation.inputsOf("Inputs of: " + b.label + " " + cell, InputRef.allOf(b.kind, (String) cell)));
    }

    /** The only element of its kind, or the first. */
    Derivation all() {
        return Derivation.inputsOf("Inputs of: " + label, InputRef.allOf(kind, ""));
    }
}

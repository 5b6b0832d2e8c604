package org.amberyard.workbench.plan;

import java.util.Comparator;
import java.util.function.Function;
import org.amberyard.model.fleet.Bus;
import org.amberyard.model.fleet.FleetPackage;
import org.amberyard.model.meta.ElementNames;
import org.amberyard.workbench.language.Words;

/** The columns that tell which bus stands in a row today. */
enum BusColumn {
    /** Its number. */
    BUS(Messages.Column_bus, Messages.Column_bus_tip, ElementNames::of),
    /** What its place is for. */
    ROLE(Messages.Column_role, Messages.Column_role_tip, b -> Words.choice(FleetPackage.Literals.ROLE, b.getRole())),
    /** Its route. */
    ROUTE(Messages.Column_route, Messages.Column_route_tip, b -> b.getRoute() == null ? "" : ElementNames.of(b.getRoute())),
    /** Its type. */
    TYPE(Messages.Column_type, Messages.Column_type_tip, b -> ElementNames.of(b.getType())),
    /** Its age in the base year; none for a bus that comes later. */
    AGE(Messages.Column_age, Messages.Column_age_tip, b -> "");

    private final String label;
    private final String meaning;
    private final Function<Bus, String> text;

    BusColumn(String label, String meaning, Function<Bus, String> text) {
        this.label = label;
        this.meaning = meaning;
        this.text = text;
    }

    String label() {
        return label;
    }

    String meaning() {
        return meaning;
    }

    /** Text for reading. */
    String text(Bus bus, int baseYear, TypeLooks looks) {
        return this == TYPE && bus.getType() != null ? looks.shortName(bus.getType()) : fullText(bus, baseYear);
    }

    /** Text for copying and for those who hear it. */
    String fullText(Bus bus, int baseYear) {
        boolean hasAge = this == AGE && bus.getInServiceYear() <= baseYear;
        return hasAge ? String.valueOf(baseYear - bus.getInServiceYear()) : text.apply(bus);
    }

    Comparator<Bus> order() {
        return this == AGE ? Comparator.comparing(Bus::getInServiceYear).reversed() : Comparator.comparing(text);
    }
}

package org.amberyard.report.papers;

import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.amberyard.core.funding.Purchase;

/** What a purchase is, as budgets of infrastructure sort it; site works are told apart by the words of their names. */
enum WorkCategory {
    /** Set aside for what nobody foresees. */
    CONTINGENCY("contingency", "contingen", "reserve"),
    /** Work on paper: engineering, permits, commissioning. */
    SOFT("soft cost", "engineering", "design", "permit", "commission", "survey", "management fee"),
    /** Software and load management. */
    CONTROLS("controls", "software", "load management", "control", "network"),
    /** Electric works. */
    ELECTRICAL("electrical", "switch", "panel", "transformer", "wiring", "breaker", "meter", "service"),
    /** Ground works. */
    CIVIL("civil", "trench", "conduit", "bollard", "paving", "concrete", "foundation", "pad"),
    /** Ports with their installation. */
    PORTS("hardware and installation"),
    /** Training and tools. */
    TRAINING("training and tools"),
    /** Site works whose name says nothing of their kind. */
    WORK("site work"),
    /** Buses. */
    BUS("bus");

    private final String label;
    private final List<String> words;

    WorkCategory(String label, String... words) {
        this.label = label;
        this.words = List.of(words);
    }

    static WorkCategory of(Purchase purchase) {
        return switch (purchase.kind()) {
            case BUS -> BUS;
            case PORTS -> PORTS;
            case TRAINING -> TRAINING;
            case SITE_WORK -> Stream.of(values()).filter(c -> c.isNamedIn(purchase.name())).findFirst().orElse(WORK);
        };
    }

    private boolean isNamedIn(String name) {
        String lower = name.toLowerCase(Locale.ROOT);
        return words.stream().anyMatch(lower::contains);
    }

    /** Name for tables. */
    String label() {
        return label;
    }

    /** True for what stands in the yard and goes into service. */
    boolean isBuilt() {
        return switch (this) {
            case CONTROLS, ELECTRICAL, CIVIL, PORTS, WORK -> true;
            default -> false;
        };
    }
}

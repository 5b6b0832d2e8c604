package org.amberyard.exchange.sheet;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.amberyard.model.depot.DepotPackage.Literals;
import org.amberyard.model.depot.TariffChargeKind;
import org.eclipse.emf.ecore.EAttribute;

/** What a row of a tariff sheet is: a charge of the tariff, or something that the tariff has once. */
enum TariffPart {
    /** A price of energy. */
    ENERGY(TariffChargeKind.ENERGY, Literals.TARIFF_CHARGE__PRICE_PER_KWH, "energy", "energy charge", "usage", "consumption", "generation", "supply",
            "delivery"),
    /** A price of demand. */
    DEMAND(TariffChargeKind.DEMAND, Literals.TARIFF_CHARGE__PRICE_PER_KW, "demand", "demand charge", "capacity", "facilities", "facilities demand"),
    /** A surcharge per energy. */
    RIDER(TariffChargeKind.RIDER_PER_KWH, Literals.TARIFF_CHARGE__PRICE_PER_KWH, "rider per kwh", "rider", "surcharge", "adjustment"),
    /** A surcharge in per cent of charges. */
    RIDER_SHARE(TariffChargeKind.RIDER_SHARE, Literals.TARIFF_CHARGE__SHARE, "rider, share", "rider share", "share", "percentage"),
    /** What is paid each month whatever is used. */
    FIXED(null, Literals.SCHEDULED_TARIFF__CUSTOMER_CHARGE, "fixed", "fixed charge", "customer", "customer charge", "basic", "basic charge",
            "service charge", "meter charge", "monthly"),
    /** The least bill of a month. */
    MINIMUM(null, Literals.SCHEDULED_TARIFF__MINIMUM_BILL, "minimum", "minimum bill", "minimum charge"),
    /** Taxes on the bill. */
    TAX(null, Literals.SCHEDULED_TARIFF__TAX_SHARE, "tax", "taxes");

    /** The words for a message. */
    static final String WORDS = "energy, demand, rider per kWh, rider, share, fixed, minimum or tax";
    private static final List<String> RIDER_NAMES = List.of("rider", "surcharge", "adjustment", "fuel cost", "public");

    private final TariffChargeKind kind;
    private final EAttribute price;
    private final List<String> words;

    TariffPart(TariffChargeKind kind, EAttribute price, String... words) {
        this.kind = kind;
        this.price = price;
        this.words = List.of(words);
    }

    /** The part of a word. */
    static Optional<TariffPart> of(String text) {
        String small = text.strip().toLowerCase(Locale.ROOT).replaceAll("\\s+", " ");
        return Arrays.stream(values()).filter(p -> p.words.contains(small)).findFirst();
    }

    /** The part of a row that does not say which: as its price is counted, and of prices per kWh as its name says. */
    static TariffPart of(TariffPrice.Per per, String charge) {
        String small = charge.toLowerCase(Locale.ROOT);
        return switch (per) {
            case KW -> DEMAND;
            case MONTH -> small.contains("minimum") ? MINIMUM : FIXED;
            case SHARE -> small.contains("tax") ? TAX : RIDER_SHARE;
            case KWH, UNTOLD -> RIDER_NAMES.stream().anyMatch(small::contains) ? RIDER : ENERGY;
        };
    }

    /** What it is called in a sentence. */
    String words() {
        return switch (this) {
            case FIXED -> "a fixed charge";
            case MINIMUM -> "a minimum bill";
            case TAX -> "a tax";
            default -> "a charge";
        };
    }

    /** How its price is counted. */
    TariffPrice.Per per() {
        return switch (this) {
            case ENERGY, RIDER -> TariffPrice.Per.KWH;
            case DEMAND -> TariffPrice.Per.KW;
            case FIXED, MINIMUM -> TariffPrice.Per.MONTH;
            case RIDER_SHARE, TAX -> TariffPrice.Per.SHARE;
        };
    }

    /** The kind of its charge; empty for what the tariff has once. */
    Optional<TariffChargeKind> kind() {
        return Optional.ofNullable(kind);
    }

    /** The field of its price. */
    EAttribute price() {
        return price;
    }
}

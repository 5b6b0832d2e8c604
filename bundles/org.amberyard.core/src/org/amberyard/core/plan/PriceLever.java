package org.amberyard.core.plan;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.BiFunction;
import org.amberyard.core.duty.FuelKind;
import org.amberyard.core.money.MoneyRates;
import org.amberyard.core.money.PricePath;

/**
 * A price of a study that can be set to another value to see what it decides.
 *
 * @param name what it is
 * @param unit in what its value is told
 * @param present its value in the study
 * @param from least value looked at
 * @param to largest value looked at
 * @param set the study at another value
 */
public record PriceLever(String name, Unit unit, double present, double from, double to,
        BiFunction<StudyInput, Double, StudyInput> set) {
    private static final double MOST_TIMES = 4;
    private static final double LEAST_TIMES = 0.1;
    private static final double HIGHEST_RATE = 0.15;

    /** In what a value is told. */
    public enum Unit {
        /** Money per litre of fuel. */
        MONEY_PER_LITRE,
        /** Money per kWh of a pack. */
        MONEY_PER_KWH,
        /** A multiple of the prices of the study. */
        TIMES,
        /** A share per year. */
        RATE
    }

    /**
     * The levers of a study: fuels, electricity, buses, packs, upkeep, infrastructure and the discount rate. A price of zero is
     * no lever, since no multiple of it leads anywhere.
     */
    public static List<PriceLever> of(StudyInput study) {
        List<PriceLever> levers = new ArrayList<>();
        study.prices().fuels().keySet().stream().sorted().forEach(kind -> levers.add(fuel(study, kind)));
        levers.add(times("electricity, all charges", PriceDeck.Subject.ELECTRIC_ENERGY, PriceDeck.Subject.ELECTRIC_DEMAND,
                PriceDeck.Subject.ELECTRIC_FIXED));
        levers.add(times("price of electric buses", PriceDeck.Subject.ELECTRIC_BUS));
        levers.add(times("price of engine buses", PriceDeck.Subject.ENGINE_BUS));
        levers.add(times("upkeep", PriceDeck.Subject.UPKEEP));
        levers.add(times("ports and site works", PriceDeck.Subject.INFRASTRUCTURE));
        double pack = study.prices().pack().base();
        levers.add(new PriceLever("replacement packs", Unit.MONEY_PER_KWH, pack, LEAST_TIMES * pack, MOST_TIMES * pack,
                (s, value) -> s.at(withPack(s.prices(), value))));
        double rate = study.money().rates().real();
        levers.add(new PriceLever("real discount rate", Unit.RATE, rate, Math.min(0, rate), Math.max(HIGHEST_RATE, 2 * rate),
                (s, value) -> s.at(s.money().at(new MoneyRates(value, s.money().rates().inflation())))));
        return levers.stream().filter(lever -> lever.from() < lever.to()).toList();
    }

    private static PriceLever fuel(StudyInput study, FuelKind kind) {
        double present = study.prices().fuels().get(kind).base();
        return new PriceLever(kind.name().toLowerCase(Locale.ROOT), Unit.MONEY_PER_LITRE, present, LEAST_TIMES * present,
                MOST_TIMES * present, (s, value) -> s.at(withFuel(s.prices(), kind, value)));
    }

    private static PriceLever times(String name, PriceDeck.Subject... subjects) {
        return new PriceLever(name, Unit.TIMES, 1, LEAST_TIMES, MOST_TIMES, (s, value) -> s.at(atLevel(s.prices(), value, subjects)));
    }

    private static PriceDeck withFuel(PriceDeck deck, FuelKind kind, double perL) {
        Map<FuelKind, PriceDeck.Price> fuels = new EnumMap<>(deck.fuels());
        fuels.put(kind, new PriceDeck.Price(perL, deck.fuels().get(kind).path()));
        return new PriceDeck(fuels, deck.exhaustFluid(), deck.pack(), deck.indices(), deck.steady());
    }

    private static PriceDeck withPack(PriceDeck deck, double perKwh) {
        return new PriceDeck(deck.fuels(), deck.exhaustFluid(), new PriceDeck.Price(perKwh, deck.pack().path()), deck.indices(),
                deck.steady());
    }

    private static PriceDeck atLevel(PriceDeck deck, double level, PriceDeck.Subject... subjects) {
        Map<PriceDeck.Subject, PricePath> paths = new EnumMap<>(PriceDeck.Subject.class);
        paths.putAll(deck.indices());
        for (PriceDeck.Subject subject : subjects) {
            paths.put(subject, deck.path(subject).times(level));
        }
        return new PriceDeck(deck.fuels(), deck.exhaustFluid(), deck.pack(), paths, deck.steady());
    }
}

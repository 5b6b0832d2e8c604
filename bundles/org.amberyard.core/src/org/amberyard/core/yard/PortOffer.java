package org.amberyard.core.yard;

import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.amberyard.core.charging.PortMix;
import org.amberyard.core.charging.PortOption;

/**
 * What ports and the moving of plugs cost a yard.
 *
 * @param options types of ports on offer; capital counts by its recovery over the life, base-date money
 * @param payPerSwap pay of moving a plug once, base-date money
 */
public record PortOffer(List<PortOption> options, double payPerSwap) {

    public PortOffer {
        options = List.copyOf(options);
    }

    /** Power of a choice of ports, kW. */
    public double connectedKw(PortMix mix) {
        return mix.units(options).stream().mapToDouble(u -> u.port().powerKw()).sum();
    }

    /** The choice with ports more of the cheapest type that stand unused. */
    PortChoice withUnused(PortChoice choice, int more) {
        return choice.withUnused(more, options, cheapest());
    }

    /** Place of the type that costs least. */
    int cheapest() {
        return IntStream.range(0, options.size()).boxed()
                .min(Comparator.comparingDouble(o -> options.get(o).costPerYear())).orElseThrow();
    }

    /** Words of a choice, with how many stand unused. */
    public String words(PortChoice choice) {
        return words(choice.mix()) + (choice.unused() == 0 ? "" : ", " + choice.unused() + " of them unused");
    }

    /** Words such as {@code 12 × AC 19.2 kW and 1 × DC 60 kW}. */
    public String words(PortMix mix) {
        return IntStream.range(0, options.size()).filter(o -> mix.counts().get(o) > 0)
                .mapToObj(o -> mix.counts().get(o) + " × " + options.get(o).port().name()).collect(Collectors.joining(" and "));
    }
}

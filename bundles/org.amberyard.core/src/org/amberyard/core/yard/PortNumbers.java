package org.amberyard.core.yard;

import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.amberyard.core.charging.ChargePolicy;

/**
 * Numbers of ports to look at: each up to that of the buses. A large yard is looked at with numbers that lie apart first, and then
 * with all around the fewest ports that serve and around the cheapest.
 *
 * @param most number of buses
 */
record PortNumbers(int most) {
    /** As many numbers as a chart has room for, and as can be looked at in seconds. */
    private static final int MANY = 24;

    private int apart() {
        return (most + MANY - 1) / MANY;
    }

    /** True for a yard in which not each number is looked at. */
    boolean large() {
        return apart() > 1;
    }

    /** Numbers to look at first. */
    List<Integer> first() {
        return IntStream.iterate(most, n -> n > 0, n -> n - apart()).boxed().sorted().toList();
    }

    /** Numbers to look at after what was found with the first. */
    List<Integer> then(SortedMap<Integer, Map<ChargePolicy, PortChoice>> found) {
        return Stream.of(ChargePolicy.values()).flatMap(policy -> {
            List<PortChoice> curve = found.values().stream().flatMap(m -> Stream.ofNullable(m.get(policy))).toList();
            return Stream.of(PortCurve.fewest(curve), PortCurve.cheapest(curve)).flatMap(c -> c.stream());
        }).flatMap(choice -> around(choice.mix().ports())).distinct().filter(n -> !found.containsKey(n)).sorted().toList();
    }

    private Stream<Integer> around(int number) {
        return IntStream.range(Math.max(1, number - apart() + 1), Math.min(most, number + apart() - 1) + 1).boxed();
    }
}

package org.amberyard.core.yard;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.IntStream;
import org.amberyard.core.charging.ChargePolicy;
import org.amberyard.core.charging.PortMix;
import org.amberyard.core.charging.PortUnit;
import org.amberyard.core.depot.Port;
import org.amberyard.core.progress.Progress;
import org.amberyard.core.progress.Steps;

/**
 * How many ports a plan needs, and which, under each policy that a yard is planned with.
 *
 * @param years the yard in each year, the last of which is billed
 * @param offer ports on offer
 * @param bought ports that the plan has in the last year
 */
record PortQuestion(List<YardInput> years, PortOffer offer, List<PortUnit> bought) {
    /** Mixes of a number in a row that may cost more than the best before the rest is passed over in a large yard. */
    private static final int DEARER_IN_A_ROW = 3;

    PortQuestion {
        years = List.copyOf(years);
        bought = List.copyOf(bought);
    }

    /** The answer by policy; none where no bus is electric in any year. */
    List<PortCurve> answer(Progress progress) {
        PortNumbers numbers = new PortNumbers(years.stream().mapToInt(y -> y.buses().size()).max().orElse(0));
        if (numbers.most() == 0) {
            return List.of();
        }
        PortSearch search = new PortSearch(years, offer, leastBill(), numbers.large() ? DEARER_IN_A_ROW : Integer.MAX_VALUE);
        int rounds = numbers.large() ? 2 : 1;
        SortedMap<Integer, Map<ChargePolicy, PortChoice>> found = new TreeMap<>();
        add(search, numbers.first(), progress.part(0, rounds), found);
        if (numbers.large()) {
            add(search, numbers.then(found), progress.part(1, rounds), found);
        }
        Map<ChargePolicy, PortChoice> plan = bought.isEmpty() ? Map.of() : search.judged(PortMix.ofUnits(bought, offer.options()));
        PortsByNumber byNumber = new PortsByNumber(offer, atRest(2) - atRest(1), found);
        return years.get(years.size() - 1).rule().planned().stream().map(policy -> new PortCurve(policy, offer, byNumber.under(policy),
                Optional.ofNullable(plan.get(policy)))).toList();
    }

    /** Bill of the last year with so many ports of the cheapest type and no bus. */
    private double atRest(int ports) {
        PortMix cheapest = PortMix.ofUnits(List.of(), offer.options()).plus(ports, offer.options(), offer.cheapest());
        return YardYear.of(years.get(years.size() - 1).atRest(cheapest.units(offer.options()))).parts().total();
    }

    private static void add(PortSearch search, List<Integer> numbers, Progress progress,
            SortedMap<Integer, Map<ChargePolicy, PortChoice>> found) {
        List<Map<ChargePolicy, PortChoice>> round = Steps.of(numbers, search::cheapest, progress);
        IntStream.range(0, round.size()).forEach(i -> found.put(numbers.get(i), round.get(i)));
    }

    /**
     * Bill at least cost with a port of every type for each bus, all as efficient as the best and without standby, less what the
     * programme does not prove; where blocks or ratchets leave that open, what least cost comes to.
     */
    private double leastBill() {
        double efficiency = offer.options().stream().mapToDouble(o -> o.port().efficiency()).max().orElse(1);
        YardInput last = years.get(years.size() - 1);
        List<PortUnit> ideal = last.buses().stream().flatMap(b -> offer.options().stream())
                .map(o -> new PortUnit(ideal(o.port(), efficiency), 1)).toList();
        YardYear year = YardYear.of(last.under(ChargePolicy.LEAST_COST).withPorts(ideal));
        return year.parts().total() - year.months().stream().mapToDouble(m -> m.costGap().orElse(0)).sum();
    }

    private static Port ideal(Port port, double efficiency) {
        return new Port(port.name(), port.direct(), port.powerKw(), efficiency, 0, 0, 0, 1, 1, 0);
    }
}

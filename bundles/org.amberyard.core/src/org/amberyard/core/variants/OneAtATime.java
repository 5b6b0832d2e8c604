package org.amberyard.core.variants;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.amberyard.core.whatif.PlanDraws;
import org.amberyard.core.whatif.Spread;
import org.amberyard.core.whatif.Tornado;
import org.amberyard.core.whatif.TornadoPlan;

/** Plans with each uncertain input low and high by itself, and with groups of inputs low and high together. */
public final class OneAtATime {
    private final TornadoPlan plan;
    private final double[][] presentCosts;

    public OneAtATime(TornadoPlan plan, double[][] presentCosts) {
        this.plan = plan;
        this.presentCosts = presentCosts;
    }

    /** What an input is varied over. */
    public Spread spread(int input) {
        return plan.spreads().get(input);
    }

    /** An end of what an input or, behind the inputs, a group is varied over, in words. */
    public String words(VariedInputs inputs, int place, boolean low) {
        if (place >= plan.spreads().size()) {
            return low ? "all low" : "all high";
        }
        return inputs.words(place, low ? spread(place).low() : spread(place).high());
    }

    /**
     * The low value, the study's own and the high value of an input in full: numbers in the unit that the user sees, or words of a
     * choice; of a group words, and null between them.
     */
    public List<Object> values(VariedInputs inputs, int place) {
        if (place >= plan.spreads().size()) {
            return Arrays.asList(words(inputs, place, true), null, words(inputs, place, false));
        }
        Spread spread = spread(place);
        return Stream.of(spread.low(), spread.base(), spread.high()).map(value -> value(inputs, place, value)).toList();
    }

    private static Object value(VariedInputs inputs, int input, double value) {
        double shown = inputs.shown(input, value);
        return Double.isNaN(shown) ? (Object) inputs.words(input, value) : (Object) shown;
    }

    /** What the values of an input are; blank for words, and for a group. */
    public String unit(VariedInputs inputs, int place) {
        return place < plan.spreads().size() ? inputs.unit(place) : "";
    }

    /** What inputs do to the present cost of a plan. */
    public Tornado cost(int of) {
        return Tornado.of(plan, presentCosts[of]);
    }

    /** What inputs do to the saving of a plan: present cost of another less its own. */
    public Tornado saving(int of, int against) {
        return Tornado.of(plan, PlanDraws.of(presentCosts).difference(against, of));
    }
}

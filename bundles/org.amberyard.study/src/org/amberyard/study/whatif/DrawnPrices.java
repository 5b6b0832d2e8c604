package org.amberyard.study.whatif;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.IntStream;
import org.amberyard.core.plan.PriceCourse;
import org.amberyard.core.plan.PriceField;
import org.amberyard.core.plan.PriceFields;
import org.amberyard.core.plan.StudyInput;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.core.variants.PriceFan;
import org.amberyard.core.whatif.SortedDraws;

/**
 * Prices as they are drawn: of each input that is a price or the rise of one, whatever else varies. A price that two inputs move has
 * none, since the second takes the place of the first.
 */
final class DrawnPrices {
    /** More draws move no percentile by as much as a line is wide. */
    private static final int MOST = 1000;

    private final StudyInput base;
    private final List<PriceLine> lines;
    private final List<PriceCourse> courses;

    private DrawnPrices(StudyInput base, List<PriceLine> lines) {
        this.base = base;
        this.lines = List.copyOf(lines);
        this.courses = PriceCourse.of(base, lines.stream().map(PriceLine::field).toList());
    }

    /** Of a study with a what-if. */
    static DrawnPrices of(StudyVariants variants, StudyResult base, UncertainInputs inputs) {
        List<PriceLine> lines = new ArrayList<>();
        IntStream.range(0, inputs.spreads().size()).forEach(input -> PriceInputs.behind(input, variants, base.input(), inputs)
                .ifPresent(lines::addAll));
        Set<PriceField> once = new HashSet<>();
        Set<PriceField> twice = new HashSet<>();
        lines.forEach(line -> (once.add(line.field()) ? once : twice).add(line.field()));
        return new DrawnPrices(base.input(), lines.stream().filter(line -> !twice.contains(line.field())).toList());
    }

    /**
     * Fans over some draws.
     *
     * @param done how many of the draws are to be looked at
     */
    List<PriceFan> fans(Evaluations draws, int done) {
        if (courses.isEmpty()) {
            return List.of();
        }
        List<StudyInput> drawn = IntStream.range(0, looked(done)).mapToObj(draws.values()).map(this::at).toList();
        return courses.stream().map(course -> new PriceFan(course.name(), course.unit(),
                Arrays.stream(course.years(drawn)).map(SortedDraws::of).toList())).toList();
    }

    /** How many draws are looked at of those that are done. */
    static int looked(int done) {
        return Math.min(MOST, done);
    }

    private StudyInput at(double[] inputs) {
        Map<PriceField, Double> prices = new HashMap<>();
        lines.forEach(line -> prices.put(line.field(), line.at(inputs[line.input()])));
        return PriceFields.at(base, field -> prices.getOrDefault(field, field.in(base)));
    }
}

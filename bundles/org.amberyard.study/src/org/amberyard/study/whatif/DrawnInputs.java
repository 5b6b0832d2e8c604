package org.amberyard.study.whatif;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.amberyard.core.units.Unit;
import org.amberyard.core.variants.DrawnInput;
import org.amberyard.core.whatif.SortedDraws;
import org.amberyard.model.meta.ElementNames;
import org.amberyard.model.meta.FieldInfo;
import org.amberyard.model.meta.InputPlace;
import org.amberyard.model.study.Study;
import org.amberyard.study.FieldFormat;
import org.amberyard.study.StudyUnits;
import org.eclipse.emf.ecore.EStructuralFeature;

/** What the fields of all uncertain inputs hold over the draws, in the user's units. */
final class DrawnInputs {
    /** More names than these make no line clearer. */
    private static final int MOST_NAMES = 3;
    private static final int PERCENT = 100;

    private final Study study;
    private final UncertainInputs inputs;
    private final StudyVariants variants;

    DrawnInputs(Study study, UncertainInputs inputs) {
        this.study = study;
        this.inputs = inputs;
        this.variants = new StudyVariants(study);
    }

    /** A field with what it holds now; elements that hold the same are told together. */
    private record Held(EStructuralFeature field, Object now) {
    }

    /**
     * The fields, by input.
     *
     * @param drawn values of all inputs, by draw
     */
    List<DrawnInput> over(List<double[]> drawn) {
        List<DrawnInput> fields = new ArrayList<>();
        for (int input = 0; input < inputs.names().size(); input++) {
            int of = input;
            double[] values = drawn.stream().mapToDouble(draw -> draw[of]).toArray();
            Map<Held, List<InputPlace>> places = variants.change(input).places().stream()
                    .collect(Collectors.groupingBy(p -> new Held(p.field(), p.value()), LinkedHashMap::new, Collectors.toList()));
            places.forEach((held, same) -> fields.add(field(of, held, names(same), values)));
        }
        return fields;
    }

    private DrawnInput field(int input, Held held, String names, double[] values) {
        FieldInfo info = FieldInfo.of(held.field());
        String now = FieldFormat.of(held.field(), study).text(held.now());
        if (inputs.ofWords(input)) {
            return new DrawnInput(inputs.names().get(input), names, info.label(), "", now, Optional.empty(), words(input, values));
        }
        Unit unit = Unit.ofToken(info.unitToken()).orElseThrow();
        double[] shown = Arrays.stream(values).map(v -> unit.show(variants.change(input).then(held.field(), held.now(), v),
                StudyUnits.of(study))).toArray();
        return new DrawnInput(inputs.names().get(input), names, info.label(), unit.symbol(StudyUnits.of(study), StudyUnits.currency(study)),
                now, Optional.of(SortedDraws.of(shown)), "");
    }

    private String words(int input, double[] values) {
        Map<String, Long> often = Arrays.stream(values).mapToObj(v -> inputs.words(input, v))
                .collect(Collectors.groupingBy(Function.identity(), Collectors.counting()));
        return IntStream.range(0, (int) inputs.spreads().get(input).high() + 1).mapToObj(word -> inputs.words(input, word)).distinct()
                .map(word -> String.format(Locale.ENGLISH, "%s %.0f %%", word, (double) PERCENT * often.getOrDefault(word, 0L) / values.length))
                .collect(Collectors.joining("; "));
    }

    private static String names(List<InputPlace> places) {
        String named = places.stream().limit(MOST_NAMES).map(p -> ElementNames.of(p.element())).collect(Collectors.joining(", "));
        return places.size() <= MOST_NAMES ? named : named + " and " + (places.size() - MOST_NAMES) + " more";
    }
}

package org.amberyard.study.whatif;

import java.util.Arrays;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import org.amberyard.core.variants.TwoTogether;
import org.amberyard.core.whatif.Grid;
import org.amberyard.core.whatif.KeptDraws;
import org.amberyard.model.whatif.UncertainInput;
import org.amberyard.model.whatif.WhatIf;

/**
 * The grid of two inputs: those that the study names, and in place of one that it does not name, the one that decides most of the
 * others.
 */
final class GridPart {
    private final StudyWhatIf whatIf;
    private final int[] inputs;

    private GridPart(StudyWhatIf whatIf, int[] inputs) {
        this.whatIf = whatIf;
        this.inputs = inputs;
    }

    /** @param widest the inputs that decide most, the widest first; none where that is not known yet */
    static GridPart of(StudyWhatIf whatIf, int[] widest) {
        if (chosenTwice(whatIf).isPresent()) {
            return new GridPart(whatIf, new int[0]);
        }
        int across = chosen(whatIf, settings(whatIf).getGridAcross());
        int upward = chosen(whatIf, settings(whatIf).getGridUpward());
        int[] others = IntStream.of(widest).filter(i -> i != across && i != upward).toArray();
        int first = across < 0 && others.length > 0 ? others[0] : across;
        int second = upward < 0 ? Arrays.stream(others).filter(i -> i != first).findFirst().orElse(upward) : upward;
        return new GridPart(whatIf, first < 0 || second < 0 || first == second ? new int[0] : new int[] {first, second});
    }

    private static WhatIf settings(StudyWhatIf whatIf) {
        return whatIf.study().getWhatIf();
    }

    /** Place of an input that is chosen; below zero where none is, or one between whose values there is nothing. */
    private static int chosen(StudyWhatIf whatIf, UncertainInput input) {
        int place = settings(whatIf).getInputs().indexOf(input);
        return place < 0 || !whatIf.varies(place) ? -1 : place;
    }

    /**
     * Place of the input that the study has chosen for both ways, whether or not it varies, as the check of the study sees it too;
     * empty where it has chosen two, or leaves one to the run.
     */
    static OptionalInt chosenTwice(StudyWhatIf whatIf) {
        int across = settings(whatIf).getInputs().indexOf(settings(whatIf).getGridAcross());
        return across >= 0 && settings(whatIf).getGridAcross() == settings(whatIf).getGridUpward() ? OptionalInt.of(across) : OptionalInt.empty();
    }

    /** Number of evaluations, whichever the inputs are. */
    static int count(StudyWhatIf whatIf) {
        return settings(whatIf).getGridColumns() * settings(whatIf).getGridRows();
    }

    /** True when there are two inputs to vary together. */
    boolean exists() {
        return inputs.length > 1;
    }

    Evaluations evaluations() {
        Grid grid = grid();
        return new Evaluations(grid.evaluations(), e -> whatIf.uncertain().alone(inputs[0], grid.first(e), inputs[1], grid.second(e)));
    }

    TwoTogether found(KeptDraws kept) {
        return new TwoTogether(inputs[0], inputs[1], grid(), whatIf.plans(kept), whatIf.base().input().baseline());
    }

    private Grid grid() {
        return new Grid(whatIf.steps(inputs[0], settings(whatIf).getGridColumns()), whatIf.steps(inputs[1], settings(whatIf).getGridRows()));
    }
}

package org.amberyard.batch;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.amberyard.model.meta.FieldInfo;
import org.amberyard.model.whatif.Shape;
import org.amberyard.model.whatif.UncertainInput;
import org.amberyard.model.whatif.WhatIf;
import org.amberyard.model.whatif.WhatifPackage.Literals;

/** Which two inputs run together in a what-if, and in how many steps, on the command line. */
final class GridOption {
    /** Words about the options for a verb's usage. */
    static final String USAGE = "[--grid ACROSS;UPWARD] [--grid-steps N|NxN]";

    private static final String GRID = "--grid";
    private static final String STEPS = "--grid-steps";
    private static final Pattern COUNTS = Pattern.compile("(\\d{1,4})(?:[x×](\\d{1,4}))?");

    private GridOption() {
    }

    static Set<String> options() {
        return Set.of(GRID, STEPS);
    }

    /** Refuses them where nothing is run. */
    static void refuse(Arguments arguments, String runsNothing) throws WrongUse {
        for (String option : List.of(GRID, STEPS)) {
            if (arguments.value(option).isPresent()) {
                throw new WrongUse(option + " cannot be given with " + runsNothing + ", which runs nothing.");
            }
        }
    }

    /** Chooses what is asked for in place of what a what-if chooses itself. */
    static void take(Arguments arguments, WhatIf whatIf) throws WrongUse {
        Optional<String> inputs = arguments.value(GRID);
        if (inputs.isPresent()) {
            String[] names = inputs.get().split(";", -1);
            if (names.length != 2) {
                throw new WrongUse(GRID + " is “" + inputs.get() + "”; it must name two uncertain inputs with a semicolon between them.");
            }
            whatIf.setGridAcross(input(names[0], whatIf));
            whatIf.setGridUpward(input(names[1], whatIf));
            check(whatIf);
        }
        Optional<String> steps = arguments.value(STEPS);
        if (steps.isPresent()) {
            Matcher counts = COUNTS.matcher(steps.get().strip());
            if (!counts.matches()) {
                throw wrongSteps(steps.get());
            }
            whatIf.setGridColumns(count(counts.group(1), steps.get()));
            whatIf.setGridRows(count(counts.group(2) == null ? counts.group(1) : counts.group(2), steps.get()));
        }
    }

    /** Whoever asks for a grid is told when there can be none of it, before anything is run. */
    private static void check(WhatIf whatIf) throws WrongUse {
        if (whatIf.getGridAcross() != null && whatIf.getGridAcross() == whatIf.getGridUpward()) {
            throw new WrongUse(GRID + ": “" + whatIf.getGridUpward().getName() + "” runs across the grid already; name another input to run "
                    + "upward, or none.");
        }
        for (UncertainInput input : Arrays.asList(whatIf.getGridAcross(), whatIf.getGridUpward())) {
            if (input != null && input.getShape() == Shape.LIST) {
                throw new WrongUse(GRID + ": “" + input.getName() + "” is a list, which has nothing between its values; name an input of another "
                        + "shape.");
            }
        }
    }

    /** An empty name leaves the choice to the run. */
    private static UncertainInput input(String name, WhatIf whatIf) throws WrongUse {
        return name.isBlank() ? null : NamedElement.of(GRID, name.strip(), whatIf.getInputs());
    }

    private static int count(String word, String given) throws WrongUse {
        int count = Integer.parseInt(word);
        if (!FieldInfo.of(Literals.WHAT_IF__GRID_COLUMNS).allows(count)) {
            throw wrongSteps(given);
        }
        return count;
    }

    private static WrongUse wrongSteps(String given) {
        FieldInfo limits = FieldInfo.of(Literals.WHAT_IF__GRID_COLUMNS);
        return new WrongUse(STEPS + " is “" + given + "”; it must be a whole number from " + (int) limits.min().orElseThrow() + " to "
                + (int) limits.max().orElseThrow() + ", or two of them with an x between them.");
    }
}

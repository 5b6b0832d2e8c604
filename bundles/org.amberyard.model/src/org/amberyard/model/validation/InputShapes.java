package org.amberyard.model.validation;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Arrays;
import java.util.List;
import org.amberyard.model.meta.FieldWords;
import org.amberyard.model.meta.InputPlace;
import org.amberyard.model.meta.NumberSeries;
import org.amberyard.model.study.Study;
import org.amberyard.model.whatif.Shape;
import org.amberyard.model.whatif.UncertainInput;
import org.amberyard.model.whatif.WhatifPackage.Literals;

/** The distribution of an uncertain input is one, and keeps its field within what the field allows. */
final class InputShapes {
    private static final String SEPARATOR = ";";
    /** How far a value may be off by rounding. */
    private static final double ROUNDED = 0.01;
    private static final MathContext DIGITS = new MathContext(3);

    private final Study study;
    private final Findings findings;

    InputShapes(Study study, Findings findings) {
        this.study = study;
        this.findings = findings;
    }

    void check(UncertainInput input, List<InputPlace> places) {
        boolean ofChoices = input.getShape() == Shape.LIST || input.getShape() == Shape.OBSERVED;
        if (FieldWords.isChoice(places.get(0).field()) && input.getShape() != Shape.LIST) {
            findings.error(input, Literals.UNCERTAIN_INPUT__SHAPE, "its field holds a choice and no number; only a list fits.");
        } else if (ofChoices) {
            checkChoices(input, places);
        } else {
            checkEnds(input, places);
        }
    }

    private void checkChoices(UncertainInput input, List<InputPlace> places) {
        String[] words = input.getChoices() == null ? new String[0] : input.getChoices().split(SEPARATOR);
        if (Arrays.stream(words).allMatch(String::isBlank)) {
            findings.error(input, Literals.UNCERTAIN_INPUT__CHOICES, "there is no choice; enter some, separated by semicolons.");
            return;
        }
        for (String word : words) {
            if (FieldWords.isChoice(places.get(0).field())) {
                WhatIfRule.checkChoice(study, input, places.get(0), word, Literals.UNCERTAIN_INPUT__CHOICES, findings);
            } else {
                checkNumber(input, places, word.strip());
            }
        }
        if (input.getShape() == Shape.OBSERVED && words.length < 2) {
            findings.error(input, Literals.UNCERTAIN_INPUT__CHOICES, "one value tells no spread; enter two or more that were observed, "
                    + "separated by semicolons.");
        }
        checkWeights(input, words.length);
    }

    private void checkNumber(UncertainInput input, List<InputPlace> places, String word) {
        try {
            double[] numbers = NumberSeries.parse(word);
            checkWithin(input, places, numbers.length == 1 ? numbers[0] : Double.NaN);
        } catch (NumberFormatException e) {
            findings.error(input, Literals.UNCERTAIN_INPUT__CHOICES, "“" + word + "” is no number; write it with a point.");
        }
    }

    private void checkWeights(UncertainInput input, int choices) {
        if (input.getWeights() == null || input.getWeights().isBlank()) {
            return;
        }
        try {
            double[] weights = NumberSeries.parse(input.getWeights());
            if (weights.length != choices || Arrays.stream(weights).anyMatch(w -> w < 0) || Arrays.stream(weights).sum() <= 0) {
                findings.error(input, Literals.UNCERTAIN_INPUT__WEIGHTS, "weights are “" + input.getWeights() + "”; enter one of 0 or "
                        + "more for each of the " + choices + " choices.");
            }
        } catch (NumberFormatException e) {
            findings.error(input, Literals.UNCERTAIN_INPUT__WEIGHTS, "weights are “" + input.getWeights() + "”; " + e.getMessage() + ".");
        }
    }

    private void checkEnds(UncertainInput input, List<InputPlace> places) {
        boolean usesLikely = input.getShape() != Shape.UNIFORM;
        boolean inOrder = input.getLow() < input.getHigh()
                && (!usesLikely || input.getLow() <= input.getLikely() && input.getLikely() <= input.getHigh());
        if (!inOrder) {
            findings.error(input, Literals.UNCERTAIN_INPUT__HIGH, "low, likely and high are " + text(input, input.getLow()) + ", "
                    + text(input, input.getLikely()) + " and " + text(input, input.getHigh()) + "; enter them rising.");
        } else if (input.getShape() == Shape.LOG_NORMAL && (input.getLikely() <= 0 || input.getLikely() == input.getHigh())) {
            findings.error(input, Literals.UNCERTAIN_INPUT__LIKELY, "a log-normal input has a likely value above 0 and a high one above "
                    + "that.");
        } else {
            checkTails(input);
            checkWithin(input, places, input.getLow());
            checkWithin(input, places, input.getHigh());
        }
    }

    /**
     * Two of the three values of a bell curve fix the third: likely is the middle of low and high, of their logarithms where it is
     * log-normal, to within rounding.
     */
    private void checkTails(UncertainInput input) {
        double middle = (input.getLow() + input.getHigh()) / 2;
        if (input.getShape() == Shape.NORMAL && Math.abs(input.getLikely() - middle) > ROUNDED * (input.getHigh() - input.getLow())) {
            findings.error(input, Literals.UNCERTAIN_INPUT__LIKELY, "likely is " + text(input, input.getLikely())
                    + ", but a normal input lies alike on both sides; enter the middle of low and high, " + written(input, middle)
                    + ", or choose another shape.");
        }
        double low = input.getLikely() * input.getLikely() / input.getHigh();
        if (input.getShape() == Shape.LOG_NORMAL && Math.abs(input.getLow() - low) > ROUNDED * low) {
            findings.error(input, Literals.UNCERTAIN_INPUT__LOW, "low is " + text(input, input.getLow()) + ", but by likely and high "
                    + "one in ten of a log-normal input stays below " + written(input, low) + "; enter that, or choose another shape.");
        }
    }

    private String written(UncertainInput input, double number) {
        return text(input, new BigDecimal(number).round(DIGITS).doubleValue());
    }

    private void checkWithin(UncertainInput input, List<InputPlace> places, double number) {
        WhatIfRule.checkWithin(input, input.getEffect(), places, number, Literals.UNCERTAIN_INPUT__LOW, Literals.UNCERTAIN_INPUT__EFFECT, findings);
    }

    private String text(UncertainInput input, double number) {
        return findings.value(input, Literals.UNCERTAIN_INPUT__LOW, number);
    }
}

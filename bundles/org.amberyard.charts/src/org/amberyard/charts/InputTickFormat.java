package org.amberyard.charts;

import java.text.FieldPosition;
import org.amberyard.core.variants.VariedInputs;

/** Writes values of an uncertain input along an axis. */
final class InputTickFormat extends AxisFormat {
    private static final long serialVersionUID = 1L;

    private final transient VariedInputs inputs;
    private final int input;

    InputTickFormat(VariedInputs inputs, int input) {
        this.inputs = inputs;
        this.input = input;
    }

    @Override
    public StringBuffer format(double number, StringBuffer to, FieldPosition position) {
        return to.append(inputs.words(input, number));
    }
}

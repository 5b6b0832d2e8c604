package org.amberyard.model.meta;

import java.util.Arrays;
import java.util.List;

/** Loads of a day in one text: so many equal steps from midnight to midnight, kW. */
public final class LoadSeries {
    private static final List<Integer> STEPS = List.of(24, 48, 96);
    private static final int MOST_KW = 50_000;

    private LoadSeries() {
    }

    /** What is wrong with the loads of a text, in words; nothing for sound ones. */
    public static String trouble(String text) {
        try {
            return trouble(NumberSeries.parse(text));
        } catch (NumberFormatException e) {
            return e.getMessage();
        }
    }

    private static String trouble(double[] loads) {
        if (!STEPS.contains(loads.length)) {
            return "there are " + loads.length + " numbers but there must be 24, 48 or 96, from midnight to midnight";
        }
        return Arrays.stream(loads).filter(l -> !(l >= 0 && l <= MOST_KW)).boxed().findFirst()
                .map(l -> "a load is " + PlainNumber.text(l) + " kW but must be 0 to 50000 kW").orElse("");
    }
}

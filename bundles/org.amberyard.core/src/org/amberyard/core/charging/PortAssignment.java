package org.amberyard.core.charging;

import java.util.List;

/**
 * Who stands at which plug when.
 *
 * @param plugged buses at plugs, in the order of their plug-ins
 * @param withoutPlug plug-ins that get no plug
 */
public record PortAssignment(List<Plugged> plugged, List<PlugIn> withoutPlug) {

    public PortAssignment {
        plugged = List.copyOf(plugged);
        withoutPlug = List.copyOf(withoutPlug);
    }

    /** Number of plug swaps that a person makes in one turn of the stretch. */
    public int swaps() {
        int sum = 0;
        for (Plugged one : plugged) {
            sum += one.swap() ? 1 : 0;
        }
        return sum;
    }
}

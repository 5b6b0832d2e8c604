package org.amberyard.core.charging;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Orders of plug-ins and of buses at plugs. */
final class PlugList {
    private PlugList() {
    }

    /** Places of the plug-ins in an order. */
    static List<Integer> ordered(List<PlugIn> plugIns, Comparator<PlugIn> order) {
        List<Integer> places = new ArrayList<>(plugIns.size());
        for (int place = 0; place < plugIns.size(); place++) {
            places.add(place);
        }
        places.sort((a, b) -> order.compare(plugIns.get(a), plugIns.get(b)));
        return places;
    }

    /** Assignment of those places that have a plug. */
    static PortAssignment assignment(Plugged[] byPlace, List<PlugIn> withoutPlug) {
        List<Plugged> plugged = new ArrayList<>(byPlace.length);
        for (Plugged one : byPlace) {
            if (one != null) {
                plugged.add(one);
            }
        }
        return new PortAssignment(plugged, withoutPlug);
    }

    /** Moment, minutes into the stretch, at whose start the fewest buses stand; the earliest such departure. */
    static double quietestMin(List<PlugIn> plugIns, double lengthMin) {
        double quietest = 0;
        int fewest = Integer.MAX_VALUE;
        for (PlugIn leaving : plugIns) {
            double minute = leaving.toMin() % lengthMin;
            int standing = 0;
            for (PlugIn other : plugIns) {
                standing += stands(other, minute, lengthMin) ? 1 : 0;
            }
            if (standing < fewest || standing == fewest && minute < quietest) {
                fewest = standing;
                quietest = minute;
            }
        }
        return quietest;
    }

    private static boolean stands(PlugIn bus, double minute, double lengthMin) {
        return bus.fromMin() <= minute && minute < bus.toMin() || minute + lengthMin < bus.toMin();
    }
}

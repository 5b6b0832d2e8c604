package org.amberyard.workbench.plan;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.amberyard.model.meta.ElementNames;
import org.amberyard.model.plans.Replacement;
import org.amberyard.model.study.Study;
import org.amberyard.model.vehicles.ElectricType;
import org.amberyard.model.vehicles.VehicleType;
import org.amberyard.workbench.look.Palette;

/** Short names and grounds of the vehicle types of a study, and which of them can be bought. */
final class TypeLooks {

    private static final List<Palette> ELECTRIC =
            List.of(Palette.ELECTRIC_1, Palette.ELECTRIC_2, Palette.ELECTRIC_3, Palette.ELECTRIC_4);
    private static final List<Palette> ENGINE = List.of(Palette.ENGINE_1, Palette.ENGINE_2, Palette.ENGINE_3, Palette.ENGINE_4);

    private final List<VehicleType> offered;
    private final Map<VehicleType, String> names = new HashMap<>();
    private final Map<VehicleType, Palette> grounds = new HashMap<>();

    TypeLooks(Study study) {
        List<VehicleType> types = study.getVehicleTypes();
        List<String> shortNames = ShortNames.of(types.stream().map(ElementNames::of).toList());
        for (int i = 0; i < types.size(); i++) {
            names.put(types.get(i), shortNames.get(i));
        }
        Set<VehicleType> planned = new HashSet<>();
        study.getPlans().forEach(p -> p.getReplacements().stream().map(Replacement::getNewType).forEach(planned::add));
        offered = types.stream().filter(t -> isBought(t) || planned.contains(t)).toList();
        int electric = 0;
        int engine = 0;
        for (VehicleType type : offered) {
            boolean isElectric = type instanceof ElectricType;
            grounds.put(type, isElectric ? ELECTRIC.get(electric++ % ELECTRIC.size()) : ENGINE.get(engine++ % ENGINE.size()));
        }
    }

    /** A type that the rule replaces by its like is on the market; one that it replaces by another is not. */
    private static boolean isBought(VehicleType type) {
        return type.getSuccessor() == null || type.getSuccessor() == type;
    }

    /** Types that can be bought, in the order of the study. */
    List<VehicleType> offered() {
        return offered;
    }

    /** Short name of a type of the study. */
    String shortName(VehicleType type) {
        return names.getOrDefault(type, ElementNames.of(type));
    }

    /** Ground of the cells of a type; plain for buses of types that are not bought any more. */
    Palette ground(VehicleType type) {
        return grounds.getOrDefault(type, Palette.BAND);
    }
}

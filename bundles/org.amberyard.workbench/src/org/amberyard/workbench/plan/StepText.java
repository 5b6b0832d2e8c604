package org.amberyard.workbench.plan;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.amberyard.model.fleet.Bus;
import org.amberyard.model.meta.ElementNames;
import org.amberyard.model.study.Study;
import org.amberyard.model.validation.BodyFit;
import org.amberyard.model.vehicles.VehicleType;
import org.amberyard.study.BusSteps;
import org.eclipse.osgi.util.NLS;

/** Steps as they are typed, chosen, copied and pasted: the name of the type bought, or what else is to be done. */
final class StepText {

    /** A text that is no step for the bus; the message is meant for the user. */
    static final class Refusal extends Exception {
        private static final long serialVersionUID = 1L;

        private Refusal(String message) {
            super(message);
        }
    }

    private StepText() {
    }

    /** Text of a step. */
    static String of(BusSteps.Step step) {
        return step.type() == null ? Messages.Step_retire : ElementNames.of(step.type());
    }

    /** Texts to choose from for a bus. */
    static List<String> choices(Bus bus, TypeLooks looks) {
        return Stream.concat(looks.offered().stream().filter(t -> BodyFit.suits(t, bus)).map(ElementNames::of),
                Stream.of(Messages.Step_retire, Messages.Step_rule)).toList();
    }

    /** The steps for a bus after a text has been entered for a year; a blank one leaves the year to the rule. */
    static BusSteps entered(BusSteps steps, int year, String text, Study study, TypeLooks looks) throws Refusal {
        String entered = text.strip();
        if (entered.isEmpty() || entered.equalsIgnoreCase(Messages.Step_rule)) {
            return steps.without(year);
        }
        return steps.with(year, entered.equalsIgnoreCase(Messages.Step_retire) ? null : type(entered, steps.bus(), study, looks));
    }

    private static VehicleType type(String entered, Bus bus, Study study, TypeLooks looks) throws Refusal {
        VehicleType type = study.getVehicleTypes().stream().filter(t -> ElementNames.of(t).equalsIgnoreCase(entered)
                || looks.shortName(t).equalsIgnoreCase(entered)).findFirst().orElse(null);
        if (type == null) {
            throw new Refusal(NLS.bind(Messages.Step_unknown, entered,
                    choices(bus, looks).stream().collect(Collectors.joining(", "))));
        }
        if (!BodyFit.suits(type, bus)) {
            throw new Refusal(misfit(type, bus));
        }
        return type;
    }

    /** Why a bus cannot be replaced by a type. */
    static String misfit(VehicleType type, Bus bus) {
        return NLS.bind(Messages.Step_misfit, new Object[] {ElementNames.of(type), type.getBodyType().getLiteral(),
            ElementNames.of(bus), ElementNames.of(bus.getRoute()), bus.getRoute().getBodyType().getLiteral()});
    }
}

package org.amberyard.batch;

import java.util.Optional;
import java.util.OptionalInt;
import org.amberyard.core.plan.FillRule.PortRule;
import org.amberyard.model.study.Study;

/** Ports that follow electric buses, on the command line. */
final class PortOption {
    static final String PORT = "--port";
    static final String SHARE = "--buses-per-port";
    private static final int MOST = 10_000;

    private PortOption() {
    }

    /** The rule given; none where no port type is given. */
    static PortRule of(Arguments arguments, Study study) throws WrongUse {
        Optional<String> port = arguments.value(PORT);
        if (port.isEmpty()) {
            if (arguments.value(SHARE).isPresent()) {
                throw new WrongUse("Option " + SHARE + " needs " + PORT + ".");
            }
            return PortRule.NONE;
        }
        var types = study.getDepot().getPortTypes();
        return new PortRule(OptionalInt.of(types.indexOf(NamedElement.of(PORT, port.get(), types))), share(arguments));
    }

    private static double share(Arguments arguments) throws WrongUse {
        String word = arguments.value(SHARE).orElse("1");
        try {
            double share = Double.parseDouble(word);
            if (share > 0 && share <= MOST) {
                return share;
            }
        } catch (NumberFormatException e) {
            // answered below together with numbers out of range
        }
        throw new WrongUse(SHARE + " is “" + word + "”; it must be a number above 0, at most " + MOST + ".");
    }
}

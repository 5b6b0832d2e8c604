package org.amberyard.batch;

import java.util.Arrays;
import java.util.EnumSet;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Collectors;
import org.amberyard.core.plan.FillRule;
import org.amberyard.core.plan.FillRule.Pace;
import org.amberyard.core.plan.FillRule.PortRule;
import org.amberyard.core.plan.Role;
import org.amberyard.model.study.Study;

/** Reads a rule that fills a plan from the options of the command line. */
final class FillRuleOptions {
    static final String ENGINE = "--engine";
    private static final String RULE = "--rule";
    private static final String NUMBER = "--number";
    private static final String FROM = "--from";
    private static final String TO = "--to";
    private static final String ROLES = "--roles";
    private static final String PORT = "--port";
    private static final String SHARE = "--buses-per-port";
    static final Set<String> OPTIONS = Set.of(RULE, NUMBER, FROM, TO, ROLES, PORT, SHARE);
    static final String USAGE = RULE + " at-age|per-year|all-by [" + NUMBER + " N] " + FROM + " YEAR " + TO + " YEAR [" + ENGINE
            + "] [" + ROLES + " ROLE,ROLE] [" + PORT + " PORT [" + SHARE + " X]]";
    private static final Map<String, Pace> PACES = Map.of("at-age", Pace.AT_AGE, "per-year", Pace.PER_YEAR, "all-by",
            Pace.ALL_BY);
    private static final int MOST = 10_000;

    private final Arguments arguments;
    private final Study study;

    FillRuleOptions(Arguments arguments, Study study) {
        this.arguments = arguments;
        this.study = study;
    }

    FillRule rule() throws WrongUse {
        Pace pace = Optional.ofNullable(PACES.get(required(RULE))).orElseThrow(() -> new WrongUse(
                RULE + " is “" + given(RULE) + "”; it must be at-age, per-year or all-by."));
        int base = study.getSettings().getBaseYear();
        int last = base + study.getSettings().getHorizonYears() - 1;
        int from = whole(FROM, base, last);
        return new FillRule(pace, pace == Pace.ALL_BY ? 1 : whole(NUMBER, 1, MOST), from - base, whole(TO, from, last) - base,
                !arguments.has(ENGINE), roles(), ports());
    }

    private String required(String option) throws WrongUse {
        return arguments.value(option).orElseThrow(() -> new WrongUse("Option " + option + " is missing: "
                + new FillPlanVerb().usage() + "."));
    }

    private String given(String option) {
        return arguments.value(option).orElse("");
    }

    private int whole(String option, int least, int most) throws WrongUse {
        required(option);
        return arguments.whole(option, least, most).getAsInt();
    }

    private Set<Role> roles() throws WrongUse {
        Set<Role> roles = EnumSet.noneOf(Role.class);
        for (String word : arguments.value(ROLES).orElse(name(Role.ROUTE)).split(",", -1)) {
            roles.add(Arrays.stream(Role.values()).filter(r -> name(r).equals(word.strip())).findFirst()
                    .orElseThrow(() -> new WrongUse(ROLES + " is “" + given(ROLES) + "”; it must be made of "
                            + Arrays.stream(Role.values()).map(FillRuleOptions::name).collect(Collectors.joining(", "))
                            + ", separated by commas.")));
        }
        return roles;
    }

    private static String name(Role role) {
        return role.name().toLowerCase(Locale.ROOT);
    }

    private PortRule ports() throws WrongUse {
        Optional<String> port = arguments.value(PORT);
        if (port.isEmpty()) {
            if (arguments.value(SHARE).isPresent()) {
                throw new WrongUse("Option " + SHARE + " needs " + PORT + ": " + new FillPlanVerb().usage() + ".");
            }
            return PortRule.NONE;
        }
        if (arguments.has(ENGINE)) {
            throw new WrongUse("Options " + PORT + " and " + ENGINE + " exclude each other: ports follow electric buses.");
        }
        var types = study.getDepot().getPortTypes();
        return new PortRule(OptionalInt.of(types.indexOf(NamedElement.of(PORT, port.get(), types))), share());
    }

    private double share() throws WrongUse {
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

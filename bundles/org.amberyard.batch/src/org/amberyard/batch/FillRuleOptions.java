package org.amberyard.batch;

import java.util.Map;
import java.util.Optional;
import java.util.Set;
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
    static final Set<String> OPTIONS = Set.of(RULE, NUMBER, FROM, TO, RoleOption.ROLES, PortOption.PORT, PortOption.SHARE);
    static final String USAGE = RULE + " at-age|per-year|all-by [" + NUMBER + " N] " + FROM + " YEAR " + TO + " YEAR [" + ENGINE
            + "] [" + RoleOption.ROLES + " ROLE,ROLE] [" + PortOption.PORT + " PORT [" + PortOption.SHARE + " X]]";
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
                !arguments.has(ENGINE), RoleOption.of(arguments, Set.of(Role.ROUTE)), ports());
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

    private PortRule ports() throws WrongUse {
        if (arguments.value(PortOption.PORT).isPresent() && arguments.has(ENGINE)) {
            throw new WrongUse("Options " + PortOption.PORT + " and " + ENGINE + " exclude each other: ports follow electric buses.");
        }
        return PortOption.of(arguments, study, new FillPlanVerb());
    }
}

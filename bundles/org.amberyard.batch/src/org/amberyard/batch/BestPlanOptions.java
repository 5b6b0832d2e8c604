package org.amberyard.batch;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.amberyard.core.plan.BestPlanAim;
import org.amberyard.core.plan.FillRule;
import org.amberyard.core.plan.Role;
import org.amberyard.model.funding.Programme;
import org.amberyard.model.plans.Plan;
import org.amberyard.model.study.Study;
import org.amberyard.study.PlanBest;

/** Reads from the options of the command line what the best plan may decide and must reach. */
final class BestPlanOptions {
    private static final String FROM = "--from";
    private static final String TO = "--to";
    private static final String PROGRAMMES = "--programmes";
    private static final String ELECTRIC = "--electric";
    private static final String BY = "--by";
    static final Set<String> OPTIONS = Set.of(FROM, TO, RoleOption.ROLES, PortOption.PORT, PortOption.SHARE, PROGRAMMES, ELECTRIC, BY);
    static final String USAGE = "[" + FROM + " YEAR] [" + TO + " YEAR] [" + RoleOption.ROLES + " ROLE,ROLE] [" + PortOption.PORT
            + " PORT [" + PortOption.SHARE + " X]] [" + PROGRAMMES + " PROGRAMME,PROGRAMME|none] [" + ELECTRIC + " N [" + BY + " YEAR]]";

    private final Arguments arguments;
    private final Study study;
    private final Plan plan;
    private final int base;
    private final int last;

    BestPlanOptions(Arguments arguments, Study study, Plan plan) {
        this.arguments = arguments;
        this.study = study;
        this.plan = plan;
        this.base = study.getSettings().getBaseYear();
        this.last = base + study.getSettings().getHorizonYears() - 1;
    }

    BestPlanAim aim() throws WrongUse {
        int from = arguments.whole(FROM, base, last).orElse(base);
        int to = arguments.whole(TO, from, last).orElse(last);
        return new BestPlanAim(from - base, to - base, RoleOption.of(arguments, EnumSet.complementOf(EnumSet.of(Role.ACTIVITY))), true, ports(), programmes(),
                goal());
    }

    private FillRule.PortRule ports() throws WrongUse {
        FillRule.PortRule given = PortOption.of(arguments, study, new BestPlanVerb());
        return given.port().isPresent() ? given
                : new FillRule.PortRule(OptionalInt.of(study.getDepot().getPortTypes().indexOf(PlanBest.usualPort(study, plan))), 1);
    }

    private List<Integer> programmes() throws WrongUse {
        Optional<String> given = arguments.value(PROGRAMMES);
        List<Programme> all = study.getProgrammes();
        if (given.isEmpty()) {
            return PlanBest.named(plan).stream().map(all::indexOf).sorted().toList();
        }
        List<Integer> places = new ArrayList<>();
        for (String name : given.get().equals("none") ? new String[0] : given.get().split(",", -1)) {
            places.add(all.indexOf(NamedElement.of(PROGRAMMES, name.strip(), all)));
        }
        return places;
    }

    private Optional<BestPlanAim.Goal> goal() throws WrongUse {
        OptionalInt count = arguments.whole(ELECTRIC, 1, study.getBuses().size());
        OptionalInt by = arguments.whole(BY, base, last);
        if (count.isEmpty() && by.isPresent()) {
            throw new WrongUse("Option " + BY + " needs " + ELECTRIC + ": " + new BestPlanVerb().usage() + ".");
        }
        return count.isEmpty() ? Optional.empty()
                : Optional.of(new BestPlanAim.Goal(count.getAsInt(), by.orElse(last) - base));
    }
}

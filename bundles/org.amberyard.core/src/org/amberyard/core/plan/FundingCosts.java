package org.amberyard.core.plan;

import java.util.Arrays;
import java.util.List;
import org.amberyard.core.funding.FundingFlow;
import org.amberyard.core.money.CostCategory;
import org.amberyard.core.money.CostLedger;
import org.amberyard.core.money.DiscountFactor;
import org.amberyard.core.why.Derivation;

/**
 * The ledger of funding. Flows are in money of their time and are brought back to constant money. What moves only after the
 * study counts at its end with what it is worth then.
 */
final class FundingCosts {
    private final StudyInput study;
    private final List<FundingFlow> flows;

    FundingCosts(StudyInput study, List<FundingFlow> flows) {
        this.study = study;
        this.flows = flows;
    }

    /** True for the categories that this ledger fills. */
    static boolean isFunding(CostCategory category) {
        return category == CostCategory.AWARDS_DUE || category == CostCategory.AID_DUE
                || Arrays.stream(FundingFlow.Kind.values()).anyMatch(k -> k.category() == category);
    }

    /** Costs without funding and these together. */
    CostLedger added(CostLedger costs) {
        CostLedger.Builder ledger = costs.more();
        for (FundingFlow flow : flows) {
            ledger.add(flow.row(), year(flow), category(flow), -flow.amount() * toConstant(study, flow.kind(), flow.year()));
        }
        return ledger.build();
    }

    /** What a flow takes off the costs of the ledger, in the money that the study states. */
    double stated(FundingFlow flow) {
        return flow.amount() * factor(flow);
    }

    private double factor(FundingFlow flow) {
        return factor(study, flow.kind(), flow.year());
    }

    /** Money that the study states over money of a kind that moves in a year. */
    static double factor(StudyInput study, FundingFlow.Kind kind, int year) {
        return study.money().stated(toConstant(study, kind, year), category(study, kind, year), Math.min(year, study.years() - 1));
    }

    private int year(FundingFlow flow) {
        return Math.min(flow.year(), study.years() - 1);
    }

    private CostCategory category(FundingFlow flow) {
        return category(study, flow.kind(), flow.year());
    }

    /** Category in which money of a kind stands that moves in a year. */
    static CostCategory category(StudyInput study, FundingFlow.Kind kind, int year) {
        if (year < study.years()) {
            return kind.category();
        }
        return kind == FundingFlow.Kind.AID ? CostCategory.AID_DUE : CostCategory.AWARDS_DUE;
    }

    /** Constant money, at the end of the study for what moves later, over money of the time when it moves. */
    private static double toConstant(StudyInput study, FundingFlow.Kind kind, int year) {
        double time = study.money().time(kind.category(), year);
        double wait = year < study.years() ? 1
                : DiscountFactor.single(study.money().rates().real(), time - study.years());
        return wait / study.money().rates().inflationFactor(time);
    }

    /** How a cell of the ledger comes about, in the money that the study states. */
    Derivation why(int row, int year, CostCategory category) {
        return Derivation.sum(category.label(), Derivation.MONEY, flows.stream()
                .filter(f -> f.row() == row && year(f) == year && category(f) == category).map(this::why).toList());
    }

    private Derivation why(FundingFlow flow) {
        double factor = factor(flow);
        String rule = "with the sign of a credit, in the money that the study states; after the study discounted to its end";
        return Derivation.of(flow.source() + ", credited", -flow.amount() * factor, Derivation.MONEY, rule, flow.why(),
                Derivation.of("money that the study states over money of the time", factor, "", "general inflation and discounting"));
    }
}

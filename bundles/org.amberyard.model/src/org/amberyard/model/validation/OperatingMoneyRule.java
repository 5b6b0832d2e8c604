package org.amberyard.model.validation;

import java.util.List;
import java.util.function.ToDoubleFunction;
import org.amberyard.model.funding.FundingPackage.Literals;
import org.amberyard.model.funding.LowCarbonCredit;
import org.amberyard.model.funding.OperatingAid;
import org.amberyard.model.study.Study;
import org.eclipse.emf.ecore.EAttribute;

/** Credits and aid have their years in order, and aid together reimburses no more than the cost. */
final class OperatingMoneyRule implements Rule {

    @Override
    public void check(Study study, Findings findings) {
        for (LowCarbonCredit credit : study.getLowCarbonCredits()) {
            if (credit.getFirstYear() > credit.getLastYear()) {
                findings.error(credit, Literals.LOW_CARBON_CREDIT__LAST_YEAR, swapped(credit.getFirstYear(), credit.getLastYear()));
            }
        }
        List<OperatingAid> aids = study.getOperatingAids();
        for (OperatingAid aid : aids) {
            if (aid.getFirstYear() > aid.getLastYear()) {
                findings.error(aid, Literals.OPERATING_AID__LAST_YEAR, swapped(aid.getFirstYear(), aid.getLastYear()));
            }
            checkSum(aid, aids, Literals.OPERATING_AID__OPERATING_SHARE, OperatingAid::getOperatingShare, findings);
            checkSum(aid, aids, Literals.OPERATING_AID__DEPRECIATION_SHARE, OperatingAid::getDepreciationShare, findings);
        }
    }

    private static String swapped(int first, int last) {
        return "its first year " + first + " is after its last year " + last + "; were they swapped?";
    }

    private static void checkSum(OperatingAid aid, List<OperatingAid> aids, EAttribute field, ToDoubleFunction<OperatingAid> share,
            Findings findings) {
        double sum = aids.stream().filter(a -> a.getFirstYear() <= aid.getFirstYear() && a.getLastYear() >= aid.getFirstYear())
                .mapToDouble(share).sum();
        if (sum > 1 && share.applyAsDouble(aid) <= 1) {
            findings.error(aid, field, "with the other aids of " + aid.getFirstYear() + " it reimburses "
                    + findings.value(aid, field, sum) + " of the cost; together they must not exceed "
                    + findings.value(aid, field, 1.0) + ".");
        }
    }
}

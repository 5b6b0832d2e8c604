package org.amberyard.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.amberyard.core.audit.AuditVerdict;
import org.amberyard.core.audit.BillAudit;
import org.amberyard.model.depot.DepotPackage.Literals;
import org.amberyard.model.depot.MeterBill;
import org.amberyard.model.study.Study;
import org.amberyard.model.validation.Finding;
import org.amberyard.model.validation.Severity;
import org.eclipse.emf.ecore.EStructuralFeature;

/** Says which bills of the meter are not what their tariff asks for the metered load, and whether data or tariff is to be looked at. */
final class BillFindings {
    private final Study study;
    private final List<BillAudit> audits;

    BillFindings(Study study, List<BillAudit> audits) {
        this.study = study;
        this.audits = audits;
    }

    List<Finding> list() {
        List<Finding> findings = new ArrayList<>();
        for (BillAudit audit : audits) {
            add(study.getDepot().getMeterBills().get(audit.bill().place()), audit, findings);
        }
        return List.copyOf(findings);
    }

    private void add(MeterBill bill, BillAudit audit, List<Finding> findings) {
        if (audit.verdict() == AuditVerdict.NOT_COVERED) {
            findings.add(new Finding(Severity.INFO, bill, Literals.METER_BILL__FIRST_DAY, "Bill " + audit.bill().printed().name()
                    + " cannot be worked out again: the meter’s data lack " + audit.missingWords() + "; import interval data of these days."));
        } else if (audit.verdict() != AuditVerdict.AGREES) {
            findings.add(new Finding(Severity.WARNING, bill, field(audit), differs(audit) + cause(audit)));
        }
    }

    private static EStructuralFeature field(BillAudit audit) {
        return audit.energyDiffers() ? Literals.METER_BILL__ENERGY_KWH
                : audit.demandDiffers() ? Literals.METER_BILL__DEMAND_KW : Literals.METER_BILL__TOTAL;
    }

    private static String differs(BillAudit audit) {
        double difference = audit.difference().orElse(0);
        String share = audit.differenceShare().isPresent()
                ? String.format(Locale.ROOT, " (%.1f %%)", 100 * Math.abs(audit.differenceShare().getAsDouble())) : "";
        return String.format(Locale.ROOT, "Bill %s: tariff %s asks %,.2f%s %s than was printed. ", audit.bill().printed().name(), audit.bill().tariff().name(),
                Math.abs(difference), share, difference > 0 ? "more" : "less");
    }

    private static String cause(BillAudit audit) {
        if (audit.bill().printed().incomplete()) {
            return "Amounts of lines of the bill have not been entered: " + String.join(", ", audit.bill().printed().without())
                    + "; enter them or the total first.";
        }
        if (audit.energyDiffers()) {
            return String.format(Locale.ROOT, "The meter’s data sum to %,.0f kWh but %,.0f kWh were billed; look at the data before the tariff.",
                    audit.meteredKwh(), audit.bill().printed().kwh().getAsDouble());
        }
        if (audit.demandDiffers()) {
            return String.format(Locale.ROOT, "The meter’s data peak at %,.1f kW but %,.1f kW were billed; look at the data before the tariff.",
                    audit.meteredKw(), audit.bill().printed().kw().getAsDouble());
        }
        return audit.unknownBefore().isEmpty() ? "Compare the lines and the prices of the tariff."
                : "Compare the lines; demands of earlier months, at which a ratchet looks back, are not all known.";
    }
}

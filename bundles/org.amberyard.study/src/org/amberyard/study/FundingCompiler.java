package org.amberyard.study;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.amberyard.core.funding.Budget;
import org.amberyard.core.funding.BusPapers;
import org.amberyard.core.funding.Conditions;
import org.amberyard.core.funding.EnergyCredit;
import org.amberyard.core.funding.Exclusion;
import org.amberyard.core.funding.FundingInput;
import org.amberyard.core.funding.Match;
import org.amberyard.core.funding.MoneyKind;
import org.amberyard.core.funding.OldBusRules;
import org.amberyard.core.funding.OperatingAid;
import org.amberyard.core.funding.Owner;
import org.amberyard.core.funding.Payout;
import org.amberyard.core.money.MoneyRates;
import org.amberyard.model.depot.PortType;
import org.amberyard.model.fleet.Bus;
import org.amberyard.model.funding.CreditUse;
import org.amberyard.model.funding.LowCarbonCredit;
import org.amberyard.model.funding.Programme;
import org.amberyard.model.study.Study;
import org.amberyard.model.vehicles.VehicleType;

/** Compiles programmes, credits and aids. */
final class FundingCompiler {
    private final Study study;
    private final PriceCompiler prices;
    private final int baseYear;

    FundingCompiler(Study study, MoneyRates rates) {
        this.study = study;
        this.prices = new PriceCompiler(study.getSettings(), rates);
        this.baseYear = study.getSettings().getBaseYear();
    }

    FundingInput compile() {
        List<Exclusion> exclusions = study.getProgrammes().stream().flatMap(p -> p.getExcludes().stream()
                .map(other -> new Exclusion(p.getName(), other.getName()))).toList();
        return new FundingInput(study.getProgrammes().stream().map(this::programme).toList(), exclusions,
                study.getLowCarbonCredits().stream().map(this::credit).toList(),
                study.getOperatingAids().stream().map(this::aid).toList(), declared());
    }

    private org.amberyard.core.funding.Programme programme(Programme programme) {
        ProgrammeWindow years = ProgrammeWindow.of(programme, StudyCompiler.fiscalYears(study.getSettings()));
        return new org.amberyard.core.funding.Programme(programme.getName(), kind(programme), programme.getPriority(),
                years.first() - baseYear, years.last() - baseYear, programme.getProbability(), OfferCompiler.offer(programme),
                new Budget(programme.getMaxBuses(), OfferCompiler.orUnlimited(programme.getBudget()),
                        OfferCompiler.orUnlimited(programme.getBudgetPerYear())),
                match(programme), conditions(programme), payout(programme));
    }

    private static MoneyKind kind(Programme programme) {
        return switch (programme.getKind()) {
            case FEDERAL -> MoneyKind.FEDERAL;
            case STATE -> MoneyKind.STATE;
            case UTILITY -> MoneyKind.UTILITY;
            case LOCAL -> MoneyKind.LOCAL;
            case TAX_CREDIT -> MoneyKind.TAX_CREDIT;
        };
    }

    private static Match match(Programme programme) {
        return new Match(programme.getMatchShare(), switch (programme.getMatchFrom()) {
            case OWN -> Match.From.OWN;
            case NON_FEDERAL -> Match.From.NON_FEDERAL;
        }, switch (programme.getMatchBase()) {
            case COVERED -> Match.Base.COVERED;
            case WHOLE -> Match.Base.WHOLE;
            case AWARD -> Match.Base.AWARD;
        });
    }

    private static Conditions conditions(Programme programme) {
        int latest = programme.getLatestEngineYear();
        return new Conditions(programme.isNewOnly(), programme.isScrapsOldBus(), programme.isSameBodyType(),
                programme.isOneForOne(), programme.isOldDiesel(), latest == 0 ? OptionalInt.empty() : OptionalInt.of(latest),
                programme.isDomesticContent(), programme.getHoldYears(), new OldBusRules(optional(programme.getLeastGvwrKg()),
                        optional(programme.getLeastDaysPerWeek()), programme.isOwnedOnly()));
    }

    private static OptionalDouble optional(Double value) {
        return value == null ? OptionalDouble.empty() : OptionalDouble.of(value);
    }

    private static BusPapers papers(Bus bus) {
        return new BusPapers(optional(bus.getGvwrKg()), optional(bus.getDaysPerWeek()), switch (bus.getOwnership()) {
            case NOT_TOLD -> Optional.empty();
            case OWNED -> Optional.of(Owner.DISTRICT);
            case LEASED -> Optional.of(Owner.LESSOR);
            case CONTRACTOR -> Optional.of(Owner.CONTRACTOR);
        });
    }

    private static Payout payout(Programme programme) {
        return new Payout(programme.getLagYears(), programme.getCreditUse() == CreditUse.AGAINST_TAX
                ? Optional.of(new Payout.Tax(programme.getTaxPerYear(), programme.getCarryYears())) : Optional.empty());
    }

    private EnergyCredit credit(LowCarbonCredit credit) {
        return new EnergyCredit(credit.getName(), credit.getFirstYear() - baseYear, credit.getLastYear() - baseYear,
                credit.getPricePerKwh(), prices.path(credit));
    }

    private OperatingAid aid(org.amberyard.model.funding.OperatingAid aid) {
        return new OperatingAid(aid.getName(), aid.getFirstYear() - baseYear, aid.getLastYear() - baseYear,
                aid.getOperatingShare(), aid.getDepreciationShare(), aid.getDepreciationYears(), aid.getLagYears());
    }

    private FundingInput.Declared declared() {
        List<VehicleType> types = study.getVehicleTypes();
        List<PortType> ports = study.getDepot().getPortTypes();
        return new FundingInput.Declared(
                IntStream.range(0, types.size()).filter(i -> types.get(i).isDomesticContent()).boxed().collect(Collectors.toSet()),
                IntStream.range(0, ports.size()).filter(i -> ports.get(i).isDomesticContent()).boxed().collect(Collectors.toSet()),
                study.getBuses().stream().collect(Collectors.toMap(Bus::getName, FundingCompiler::papers, (one, other) -> one)));
    }
}

package org.amberyard.core.plan;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.amberyard.core.audit.BillAudit;
import org.amberyard.core.duty.DutyTable;

/** All results of a study, with the input that they were computed from. Immutable and safe for use from several threads. */
public final class StudyResult {
    private final StudyInput input;
    private final DutyTable duty;
    private final StudyFigures figures;
    private final RouteFits fits;
    private final List<PlanResult> plans;
    private final List<Comparison> comparisons;
    private final List<TripCover> tripCovers;
    private final List<SpareCover> spareCovers;
    private final Map<Integer, YardPrices> yardPrices = new HashMap<>();
    private final FitOutlooks fitOutlooks;
    private List<List<RouteOutlook>> outlooks;
    private List<List<CoverYear>> covers;
    private List<BillAudit> billAudits;

    /**
     * Results that were found one by one.
     *
     * @param input the input
     * @param duty energy of every route with every vehicle type that fits it
     * @param fits whether electric types can do the routes with the ports on offer
     * @param plans results of the plans, in the order of the input
     * @param tripCovers who covers the trips in the last year, in the order of the plans
     * @param spareCovers what the spares can stand in for in the last year, in the order of the plans
     */
    public StudyResult(StudyInput input, DutyTable duty, RouteFits fits, List<PlanResult> plans, List<TripCover> tripCovers,
            List<SpareCover> spareCovers) {
        this(input, duty, StudyFigures.of(input, duty), fits, plans, tripCovers, spareCovers);
    }

    StudyResult(StudyInput input, DutyTable duty, StudyFigures figures, RouteFits fits, List<PlanResult> plans,
            List<TripCover> tripCovers, List<SpareCover> spareCovers) {
        this(input, duty, figures, fits, plans, tripCovers, spareCovers, new FitOutlooks(input, duty));
    }

    private StudyResult(StudyInput input, DutyTable duty, StudyFigures figures, RouteFits fits, List<PlanResult> plans,
            List<TripCover> tripCovers, List<SpareCover> spareCovers, FitOutlooks fitOutlooks) {
        this.input = input;
        this.duty = duty;
        this.figures = figures;
        this.fits = fits;
        this.plans = List.copyOf(plans);
        this.comparisons = Comparison.all(input, plans);
        this.tripCovers = List.copyOf(tripCovers);
        this.spareCovers = List.copyOf(spareCovers);
        this.fitOutlooks = fitOutlooks;
    }

    /** The input. */
    public StudyInput input() {
        return input;
    }

    /** Energy of every route with every vehicle type that fits it. */
    public DutyTable duty() {
        return duty;
    }

    /** What all plans share. */
    StudyFigures figures() {
        return figures;
    }

    /**
     * What electricity costs at the yard of a plan in the last year; where it goes by blocks the yard is planned again when it is
     * first asked for.
     */
    synchronized YardPrices yardPrices(int plan) {
        return yardPrices.computeIfAbsent(plan, p -> {
            PlanResult of = plans.get(p);
            return YardPrices.of(of.yards().get(of.yards().size() - 1), of.yardComparison().memory());
        });
    }

    /** Whether electric types can do the routes with the ports on offer. */
    public RouteFits fits() {
        return fits;
    }

    /** Results of the plans, in the order of the input. */
    public List<PlanResult> plans() {
        return plans;
    }

    /** Every plan but the baseline against the baseline. */
    public List<Comparison> comparisons() {
        return comparisons;
    }

    /** Who covers the trips in the last year, in the order of the plans. */
    public List<TripCover> tripCovers() {
        return tripCovers;
    }

    /** What the spares can stand in for in the last year, in the order of the plans. */
    public List<SpareCover> spareCovers() {
        return spareCovers;
    }

    /** How often a fit fails and what charging it needs; found when it is first asked for, which takes a while where it fails. */
    public FitOutlook outlook(RouteFit fit) {
        return fitOutlooks.of(fit);
    }

    /**
     * For every plan, what it means for each route, with failing days and remedies. They are found from all the rest when they
     * are first asked for, which takes a while.
     */
    public synchronized List<List<RouteOutlook>> outlooks() {
        if (outlooks == null) {
            outlooks = new RouteOutlooks(this).all().stream().map(List::copyOf).toList();
        }
        return outlooks;
    }

    /** For every plan, what its fleet cannot cover year by year; found when it is first asked for. */
    public synchronized List<List<CoverYear>> covers() {
        if (covers == null) {
            TripDrives drives = new TripDrives(duty);
            covers = plans.stream().map(p -> CoverYear.of(this, p, drives)).toList();
        }
        return covers;
    }

    /** Printed bills of the meter held against their tariffs; worked out when they are first asked for. */
    public synchronized List<BillAudit> billAudits() {
        if (billAudits == null) {
            billAudits = input.depot().bills().audits();
        }
        return billAudits;
    }

    /** Results of the baseline. */
    public PlanResult baseline() {
        return plans.get(input.baseline());
    }

    /** The same at the prices of a study that differs in prices alone, with the plans costed anew. */
    synchronized StudyResult at(StudyInput study, List<PlanResult> costed) {
        StudyResult other = new StudyResult(study, duty, figures, fits, costed, tripCovers, spareCovers, fitOutlooks);
        // The fleets are the same, and so is what they cover.
        other.covers = covers;
        return other;
    }
}

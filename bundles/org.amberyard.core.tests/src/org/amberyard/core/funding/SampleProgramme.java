package org.amberyard.core.funding;

import java.util.Map;

/**
 * A programme for tests that pays in years 0 to 3 without conditions; changed one thing at a time.
 *
 * @param built the programme
 */
public record SampleProgramme(Programme built) {

    /** State money in cash for up to a thousand buses, and nothing else yet. */
    public static SampleProgramme named(String name) {
        Offer offer = new Offer(Map.of(), PortAward.NONE, ShareAward.NONE, ShareAward.NONE, false);
        return new SampleProgramme(new Programme(name, MoneyKind.STATE, 1, 0, 3, 1, offer, Budget.ofBuses(1000), Match.NONE,
                Conditions.NONE, Payout.ADVANCE));
    }

    /** Pays for electric buses of body type C. */
    public SampleProgramme forBuses(BusAward award) {
        Offer o = built.offer();
        return with(new Offer(Map.of("C", award), o.ports(), o.works(), o.training(), o.afterOthers()));
    }

    /** Pays a share of ports, works and training, each up to a cap. */
    public SampleProgramme forYard(double share, double cap) {
        Offer o = built.offer();
        return with(new Offer(o.buses(), new PortAward(0, share, cap, PortAward.Cover.ALL), new ShareAward(share, cap),
                new ShareAward(share, cap), o.afterOthers()));
    }

    public SampleProgramme forPorts(PortAward award) {
        Offer o = built.offer();
        return with(new Offer(o.buses(), award, o.works(), o.training(), o.afterOthers()));
    }

    public SampleProgramme afterOthers() {
        Offer o = built.offer();
        return with(new Offer(o.buses(), o.ports(), o.works(), o.training(), true));
    }

    private SampleProgramme with(Offer offer) {
        return of(built.kind(), built.priority(), built.probability(), offer, built.budget(), built.match(), built.conditions(),
                built.payout());
    }

    public SampleProgramme kind(MoneyKind kind) {
        return of(kind, built.priority(), built.probability(), built.offer(), built.budget(), built.match(), built.conditions(),
                built.payout());
    }

    public SampleProgramme priority(int priority) {
        return of(built.kind(), priority, built.probability(), built.offer(), built.budget(), built.match(), built.conditions(),
                built.payout());
    }

    public SampleProgramme probability(double probability) {
        return of(built.kind(), built.priority(), probability, built.offer(), built.budget(), built.match(), built.conditions(),
                built.payout());
    }

    public SampleProgramme budget(int buses, double total, double perYear) {
        return of(built.kind(), built.priority(), built.probability(), built.offer(), new Budget(buses, total, perYear),
                built.match(), built.conditions(), built.payout());
    }

    public SampleProgramme match(double share, Match.From from) {
        return match(share, from, Match.Base.COVERED);
    }

    public SampleProgramme match(double share, Match.From from, Match.Base base) {
        return of(built.kind(), built.priority(), built.probability(), built.offer(), built.budget(), new Match(share, from, base),
                built.conditions(), built.payout());
    }

    public SampleProgramme conditions(Conditions conditions) {
        return of(built.kind(), built.priority(), built.probability(), built.offer(), built.budget(), built.match(), conditions,
                built.payout());
    }

    public SampleProgramme payout(Payout payout) {
        return of(built.kind(), built.priority(), built.probability(), built.offer(), built.budget(), built.match(),
                built.conditions(), payout);
    }

    private SampleProgramme of(MoneyKind kind, int priority, double probability, Offer offer, Budget budget, Match match,
            Conditions conditions, Payout payout) {
        return new SampleProgramme(new Programme(built.name(), kind, priority, built.firstYear(), built.lastYear(), probability,
                offer, budget, match, conditions, payout));
    }
}

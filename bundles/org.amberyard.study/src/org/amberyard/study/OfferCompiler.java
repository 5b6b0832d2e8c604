package org.amberyard.study;

import java.util.Map;
import java.util.stream.Collectors;
import org.amberyard.core.funding.BusAward;
import org.amberyard.core.funding.Offer;
import org.amberyard.core.funding.PortAward;
import org.amberyard.core.funding.ShareAward;
import org.amberyard.model.funding.Programme;

/** Compiles what programmes pay for. */
final class OfferCompiler {
    private OfferCompiler() {
    }

    static Offer offer(Programme programme) {
        Map<String, BusAward> buses = programme.getBusAwards().stream().collect(Collectors.toMap(a -> a.getBodyType().getLiteral(),
                a -> new BusAward(a.getAmount(), a.getPriceShare(), a.getPriceDifferenceShare(), a.getCap())));
        return new Offer(buses,
                new PortAward(programme.getAmountPerPort(), programme.getInfrastructureShare(), programme.getCapPerPort(),
                        cover(programme)),
                new ShareAward(programme.getInfrastructureShare(), orUnlimited(programme.getCapPerWork())),
                new ShareAward(programme.getTrainingShare(), orUnlimited(programme.getTrainingCap())),
                programme.isAfterOthers());
    }

    /** An amount, or infinity where none is set. */
    static double orUnlimited(Double limit) {
        return limit == null ? Double.POSITIVE_INFINITY : limit;
    }

    private static PortAward.Cover cover(Programme programme) {
        return switch (programme.getPortCover()) {
            case ALL -> PortAward.Cover.ALL;
            case HARDWARE -> PortAward.Cover.HARDWARE;
            case INSTALLATION -> PortAward.Cover.INSTALLATION;
        };
    }
}

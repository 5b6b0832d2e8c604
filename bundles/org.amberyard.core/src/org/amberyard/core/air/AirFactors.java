package org.amberyard.core.air;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.amberyard.core.duty.FuelKind;

/**
 * All emission factors of a study.
 *
 * @param fuels by fuel
 * @param engines groups of engines in order; the first that names the body type counts before those for all
 * @param otherEngines factors of engines that no group holds; its fuel, body types and model years do not count
 * @param wear dust of brakes and tyres by body type
 * @param heaterPerL what a fuel-fired heater emits by fuel burnt; it burns diesel
 * @param grid the power plants that answer for charging
 * @param otherGrid the same on the other basis, for comparison; empty where its factors are not known
 * @param warming warming of the gases
 * @param upstream true when what is upstream of the tank is told, in a column of its own
 */
public record AirFactors(Map<FuelKind, FuelFactors> fuels, List<EngineFactors> engines, EngineFactors otherEngines,
        List<WearFactors> wear, EmissionRates heaterPerL, GridPath grid, Optional<GridPath> otherGrid,
        WarmingPotentials warming, boolean upstream) {

    public AirFactors {
        fuels = Map.copyOf(fuels);
        engines = List.copyOf(engines);
        wear = List.copyOf(wear);
    }

    /** Factors of an engine. */
    public EngineFactors engine(FuelKind fuel, String bodyType, int modelYear) {
        return engines.stream().filter(e -> e.holdsFor(fuel, bodyType, modelYear) && !e.bodyTypes().isEmpty()).findFirst()
                .or(() -> engines.stream().filter(e -> e.holdsFor(fuel, bodyType, modelYear)).findFirst()).orElse(otherEngines);
    }

    /** Dust factors of a body type. */
    public WearFactors wear(String bodyType) {
        return wear.stream().filter(w -> w.holdsFor(bodyType) && !w.bodyTypes().isEmpty()).findFirst()
                .or(() -> wear.stream().filter(w -> w.holdsFor(bodyType)).findFirst()).orElse(WearFactors.UNKNOWN);
    }
}

package org.amberyard.core.duty;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

/**
 * An electric bus that stands ten hours at -20 °C, counted by hand: a pack of 0.3 kWh/K that loses 0.025 kW/K and is held at 5 °C by a
 * heater of 4 kW, a cabin of 0.12 kWh/K that loses 0.2 kW/K.
 */
class StandingHeatTest {
    private static final WeatherDay COLD = WeatherDay.steady(-20);
    private static final double PACK_GONE = 1 - Math.exp(-0.025 * 0.5 / 0.3);
    private static final double HOLDING_KW = 0.025 * 25;

    private static BusHeat bus(Heater.Source source) {
        return new BusHeat(SampleBus.electric(source, SampleBus.RECOVERY), COLD, 0);
    }

    @Test
    void withoutPreconditioningThePackIsHeldAndTheCabinIsCold() {
        BusHeat bus = bus(Heater.Source.RESISTANCE);
        BusHeat.Stand stand = bus.stand(0, 600, true, new YardHabit(false, false, 17));
        assertEquals(10 * HOLDING_KW, stand.gridKwh(), 1e-9);
        assertEquals(5, bus.packC(), 1e-9);
        assertEquals(0, stand.fuelL(), 0);
    }

    @Test
    void unpluggedThePackFollowsTheAir() {
        BusHeat bus = bus(Heater.Source.RESISTANCE);
        assertEquals(0, bus.stand(0, 600, false, new YardHabit(false, true, 17)).gridKwh(), 0);
        assertEquals(-20 + 25 * Math.exp(-10 / 12.0), bus.packC(), 1e-9);
    }

    /** The pack is warmed in the last hour, for half of it at the limit of its heater; the cabin to 16 °C in the last half hour. */
    @Test
    void preconditioningWarmsThePackInTheLastHourAndTheCabinInTheLastHalf() {
        BusHeat bus = bus(Heater.Source.RESISTANCE);
        BusHeat.Stand stand = bus.stand(0, 600, true, new YardHabit(false, true, 17));
        assertEquals(15, bus.packC(), 1e-9);
        assertEquals(9 * HOLDING_KW + 4 * 0.5 + (packKw() + cabinKw()) * 0.5, stand.gridKwh(), 1e-9);
        assertEquals(packKw() + cabinKw(), stand.lastKw(), 1e-9);
    }

    /** From where 4 kW have brought it in half an hour to 15 °C in another. */
    private static double packKw() {
        double warmedC = 5 + (-20 + 4 / 0.025 - 5) * PACK_GONE;
        return 0.025 * (warmedC + (15 - warmedC) / PACK_GONE + 20);
    }

    private static double cabinKw() {
        return 0.2 * 36 / (1 - Math.exp(-0.2 * 0.5 / 0.12));
    }

    @Test
    void aFuelFiredHeaterBurnsWhatTheCabinTakes() {
        BusHeat.Stand stand = bus(Heater.Source.FUEL_FIRED).stand(0, 600, true, new YardHabit(false, true, 17));
        assertEquals(cabinKw() * 0.5 / 0.8 / FuelKind.DIESEL.kwhPerL(), stand.fuelL(), 1e-9);
        assertEquals(9 * HOLDING_KW + 4 * 0.5 + packKw() * 0.5, stand.gridKwh(), 1e-9);
    }

    /** A port of 3 kW is less than the heater of the pack, and leaves nothing for the cabin while that takes it all. */
    @Test
    void heatTakesNoMoreThanThePortGives() {
        BusHeat bus = bus(Heater.Source.RESISTANCE);
        BusHeat.Stand stand = bus.stand(0, 600, true, new YardHabit(false, true, 3));
        assertEquals(9 * HOLDING_KW + 3 * 1.0, stand.gridKwh(), 1e-9);
        assertEquals(3, stand.lastKw(), 1e-9);
    }
}

package org.amberyard.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Locale;
import org.amberyard.core.units.Unit;
import org.amberyard.core.units.UnitSystem;
import org.amberyard.model.common.BodyType;
import org.amberyard.model.common.CommonPackage;
import org.amberyard.model.fleet.FleetPackage;
import org.amberyard.model.meta.DataDictionary;
import org.amberyard.model.meta.ModelWords;
import org.amberyard.model.prices.PricesPackage;
import org.amberyard.model.routes.Layover;
import org.amberyard.model.routes.RoutesPackage;
import org.amberyard.model.study.Study;
import org.amberyard.model.study.StudyFactory;
import org.amberyard.model.study.StudyPackage;
import org.amberyard.model.vehicles.VehiclesPackage;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FieldFormatTest {
    private static final EStructuralFeature DISTANCE = RoutesPackage.Literals.RUN__DISTANCE_KM;
    private static final EStructuralFeature DISCOUNT = StudyPackage.Literals.SETTINGS__DISCOUNT_RATE;
    private static final EStructuralFeature FUEL = PricesPackage.Literals.FUEL_PRICE__PRICE_PER_L;
    private static final EStructuralFeature DEPARTURE = RoutesPackage.Literals.RUN__DEPARTURE_MIN;
    private static final EStructuralFeature PRICE = VehiclesPackage.Literals.VEHICLE_TYPE__PURCHASE_PRICE;

    private static FieldFormat us(EStructuralFeature field) {
        return FieldFormat.of(field, UnitSystem.US, "USD", Locale.US);
    }

    @Test
    void everyFieldOfTheModelHasAKnownUnit() {
        assertTrue(DataDictionary.rows().stream().allMatch(r -> Unit.ofToken(r.unit()).isPresent()));
    }

    @Test
    void headersCarryTheUnit() {
        assertEquals("Distance (mi)", us(DISTANCE).header());
        assertEquals("Distance (km)", FieldFormat.of(DISTANCE, UnitSystem.METRIC, "USD", Locale.US).header());
        assertEquals("Price (USD/gal)", us(FUEL).header());
        assertEquals("Name", us(RoutesPackage.Literals.RUN__NAME).header());
    }

    @Test
    void aNumberThatMayBeMissingIsReadFromABlank() throws FieldFormatException {
        FieldFormat outside = us(FleetPackage.Literals.CONSUMPTION_LOG__OUTSIDE_C);
        assertNull(outside.parse(" "));
        assertEquals("", outside.text(null));
        assertEquals(10, (double) outside.parse("50"), 1e-12);
        assertEquals("50", outside.text(10.0));
        assertTrue(outside.isNumber());
        assertThrows(FieldFormatException.class, () -> us(DISTANCE).parse(""));
    }

    @Test
    void showsAndReadsInTheUsersUnits() throws FieldFormatException {
        assertEquals("18", us(DISTANCE).text(18 * 1.609344));
        assertEquals(18 * 1.609344, (double) us(DISTANCE).parse("18"), 1e-12);
        assertEquals("4.5", us(DISCOUNT).text(0.045));
        assertEquals("3.657", us(FUEL).text(3.657 / 3.785411784));
        assertEquals("2026", us(StudyPackage.Literals.SETTINGS__BASE_YEAR).text(2026));
        assertEquals("18 mi", us(DISTANCE).textWithUnit(18 * 1.609344));
    }

    /** What is typed, edited and filed has the minus of keyboards, what is read that of print; both are taken. */
    @Test
    void aMinusIsReadInBothSigns() throws FieldFormatException {
        FieldFormat outside = us(FleetPackage.Literals.CONSUMPTION_LOG__OUTSIDE_C);
        assertEquals("-4", outside.text(-20.0));
        assertEquals("−4", outside.shown(-20.0));
        assertEquals("−4 °F", outside.textWithUnit(-20.0));
        assertEquals(-20, (double) outside.parse("−4"), 1e-12);
        assertEquals(-20, (double) outside.parse("-4 °F"), 1e-12);
    }

    /** A price year of 0 is no year; other years say themselves. */
    @Test
    void aYearThatIsLeftToTheBaseYearSaysSo() throws FieldFormatException {
        FieldFormat year = us(StudyPackage.Literals.SETTINGS__PRICE_YEAR);
        assertEquals("as the base year", year.textWithUnit(0));
        assertEquals("2025", year.textWithUnit(2025));
        assertEquals(0, year.parse("As the base year"));
        assertEquals("0", us(StudyPackage.Literals.SETTINGS__BASE_YEAR).textWithUnit(0));
    }

    @ParameterizedTest
    @CsvSource(delimiter = ';', value = {"4.5;0.045", "4.5 %;0.045", "4.5%;0.045", "0;0"})
    void sharesAreTypedAsPercent(String typed, double share) throws FieldFormatException {
        assertEquals(share, (double) us(DISCOUNT).parse(typed), 1e-15);
    }

    @ParameterizedTest
    @CsvSource(delimiter = ';', value = {"338000;338000", "$338,000;338000", "338,000.50 USD;338000.5", "(1,200);-1200",
        "1e5;100000", " 12 ;12", "-3;-3"})
    void moneyIsReadAsSpreadsheetsWriteIt(String typed, double amount) throws FieldFormatException {
        assertEquals(amount, (double) us(PRICE).parse(typed), 1e-9);
    }

    @Test
    void otherUnitBehindTheNumberIsConverted() throws FieldFormatException {
        assertEquals(32.2, (double) us(DISTANCE).parse("32.2 km"), 1e-12);
        assertEquals(20 * 1.609344, (double) us(DISTANCE).parse("20 mi"), 1e-12);
        assertEquals(20 * 1.609344, (double) FieldFormat.of(DISTANCE, UnitSystem.METRIC, "USD", Locale.US).parse("20 mi"), 1e-12);
    }

    @Test
    void localeDecidesTheSeparatorsAndAmbiguityIsRefused() throws FieldFormatException {
        FieldFormat german = FieldFormat.of(DISTANCE, UnitSystem.METRIC, "EUR", Locale.GERMANY);
        assertEquals(1234.5, (double) german.parse("1.234,5"), 0);
        assertEquals("1.234,5", german.text(1234.5));
        assertThrows(FieldFormatException.class, () -> us(DISTANCE).parse("1,5"));
        assertThrows(FieldFormatException.class, () -> german.parse("1.5"));
    }

    @ParameterizedTest
    @CsvSource({"6:35,395", "06:35,395", "6:35a,395", "2:05 pm,845", "12:00 am,0", "12:30p,750", "23:59,1439"})
    void clockTimesAsRouteSheetsWriteThem(String typed, int minutes) throws FieldFormatException {
        assertEquals(minutes, us(DEPARTURE).parse(typed));
        assertEquals("6:35", us(DEPARTURE).text(395));
    }

    @Test
    void messagesNameFieldTextAndWhatIsAllowed() {
        assertEquals("Departure is “25:00”; it must be a clock time such as 6:35 or 2:05 pm.",
                message(DEPARTURE, "25:00"));
        assertEquals("Distance is “abc”; it must be a number such as 1,234.5 in mi.", message(DISTANCE, "abc"));
        assertEquals("Distance is “”; it must be a number such as 1,234.5 in mi.", message(DISTANCE, ""));
        assertEquals("Stops is “2.5”; it must be a whole number.", message(RoutesPackage.Literals.RUN__STOPS, "2.5"));
        assertEquals("Body type is “Z”; it must be one of A, B, C, D.",
                message(RoutesPackage.Literals.ROUTE__BODY_TYPE, "Z"));
        assertEquals("Lift is “maybe”; it must be yes or no.", message(RoutesPackage.Literals.ROUTE__LIFT_REQUIRED, "maybe"));
        assertEquals("Distance is “NaN”; it must be a number such as 1,234.5 in mi.", message(DISTANCE, "NaN"));
    }

    private static String message(EStructuralFeature field, String typed) {
        return assertThrows(FieldFormatException.class, () -> us(field).parse(typed)).getMessage();
    }

    @Test
    void choicesFlagsAndTexts() throws FieldFormatException {
        assertEquals(BodyType.C, us(RoutesPackage.Literals.ROUTE__BODY_TYPE).parse("c"));
        assertEquals(Layover.HOME, us(RoutesPackage.Literals.RUN__LAYOVER).parse("home"));
        assertEquals(true, us(RoutesPackage.Literals.ROUTE__LIFT_REQUIRED).parse("Yes"));
        assertEquals("a note", us(CommonPackage.Literals.SOURCED__NOTE).parse("a note"));
        assertEquals("", us(CommonPackage.Literals.SOURCED__NOTE).text(null));
    }

    @ParameterizedTest
    @CsvSource({"en-US,'1,234.5',1234.5", "en-US,1.5,1.5", "es-US,'1,234.5',1234.5", "es-MX,1.5,1.5", "es-ES,'1.234,5',1234.5", "es-ES,'1,5',1.5",
        "de-DE,'1.234,5',1234.5", "de-DE,'1,5',1.5", "fr-FR,'1 234,5',1234.5", "fr-FR,'1,5',1.5", "tr-TR,'1.234,5',1234.5",
        "ar-EG,'-3',-3", "hi-IN,'1,234.5',1234.5", "fa-IR,12,12"})
    void numbersAreReadAsTheLocaleWritesThem(String locale, String typed, double number) throws FieldFormatException {
        FieldFormat format = metric(locale);
        assertEquals(number, (double) format.parse(typed), 0);
        assertEquals(number, (double) format.parse(format.text(number)), 0);
    }

    @ParameterizedTest
    @CsvSource({"en-US,'1.234,5'", "en-US,'1,5'", "es-US,'1,5'", "es-MX,'1.234,5'", "es-ES,'1,234.5'", "es-ES,1.5", "de-DE,1.5", "de-DE,'1,234.5'",
        "fr-FR,1.5", "fr-FR,'1.234,5'"})
    void whatAnotherLocaleWritesIsRefusedAndSaysHowItIsWritten(String locale, String typed) {
        String refusal = assertThrows(FieldFormatException.class, () -> metric(locale).parse(typed)).getMessage();
        assertTrue(refusal.contains(typed) && refusal.contains(new NumberText(Locale.forLanguageTag(locale)).text(1234.5, true)), refusal);
    }

    private static FieldFormat metric(String locale) {
        return FieldFormat.of(DISTANCE, UnitSystem.METRIC, "USD", Locale.forLanguageTag(locale));
    }

    @Test
    void fieldsAreShownAndReadInTheWordsOfALanguage() throws FieldFormatException {
        Study study = StudyFactory.eINSTANCE.createStudy();
        ModelWords spanish = ModelWords.of(Locale.forLanguageTag("es"));
        FieldFormat layover = FieldFormat.of(RoutesPackage.Literals.RUN__LAYOVER, study, spanish);
        assertEquals("domicilio", layover.text(Layover.HOME));
        assertEquals(Layover.HOME, layover.parse("Domicilio"));
        assertEquals(Layover.HOME, layover.parse("home"));
        FieldFormat lift = FieldFormat.of(RoutesPackage.Literals.ROUTE__LIFT_REQUIRED, study, spanish);
        assertEquals("Elevador", lift.header());
        assertEquals(true, lift.parse(lift.text(true)));
        assertEquals(false, lift.parse(lift.text(false)));
        assertEquals("home", FieldFormat.of(RoutesPackage.Literals.RUN__LAYOVER, study).text(Layover.HOME));
    }

    /** What nobody has measured is empty, not zero, and comes back so; a zero of older files is the same. */
    @Test
    void zeroThatSaysThatNothingWasMeasuredIsEmpty() throws FieldFormatException {
        FieldFormat health = us(FleetPackage.Literals.BUS__MEASURED_HEALTH);
        assertEquals("", health.text(0.0));
        assertEquals("", health.exactText(0.0));
        assertEquals("", health.shown(0.0));
        assertEquals("not told", health.textWithUnit(0.0));
        assertEquals(0.0, health.parse(" "));
        assertEquals(0.0, health.parse("0"));
        assertEquals("87", health.text(0.87));
        FieldFormat retires = us(FleetPackage.Literals.BUS__PLANNED_RETIREMENT_YEAR);
        assertEquals("", retires.text(0));
        assertEquals(0, retires.parse(""));
        assertEquals("0", us(FleetPackage.Literals.BUS__ODOMETER_KM).text(0.0), "an odometer of zero is a reading");
    }

    /** A whole number that may be missing. */
    @Test
    void seatsThatNobodyHasToldAreEmpty() throws FieldFormatException {
        FieldFormat seats = us(FleetPackage.Literals.BUS__SEATS);
        assertTrue(seats.isNumber());
        assertEquals("", seats.text(null));
        assertNull(seats.parse(""));
        assertEquals(71, seats.parse("71"));
        assertThrows(FieldFormatException.class, () -> seats.parse("71.5"));
    }
}

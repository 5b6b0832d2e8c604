package org.amberyard.workbench.language;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.amberyard.charts.BillWaterfallChart;
import org.amberyard.charts.Chart;
import org.amberyard.charts.ChartTheme;
import org.amberyard.charts.CurveFitChart;
import org.amberyard.charts.DayLoadChart;
import org.amberyard.charts.RangeMarginChart;
import org.amberyard.charts.YardDay;
import org.amberyard.charts.YardLoads;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.core.progress.Progress;
import org.amberyard.core.units.UnitSystem;
import org.amberyard.core.why.Derivation;
import org.amberyard.exchange.sheet.SheetKind;
import org.amberyard.model.io.StudyDefaults;
import org.amberyard.model.io.StudyFile;
import org.amberyard.model.io.StudyFileException;
import org.amberyard.model.routes.EnergyModel;
import org.amberyard.model.study.Study;
import org.amberyard.model.vehicles.ElectricType;
import org.amberyard.report.Cautions;
import org.amberyard.report.CurveChangeTable;
import org.amberyard.report.Headline;
import org.amberyard.report.ResidualTable;
import org.amberyard.report.ResultColumn;
import org.amberyard.report.ResultTable;
import org.amberyard.report.ResultTables;
import org.amberyard.report.WhyText;
import org.amberyard.study.CurveFitting;
import org.amberyard.study.CurveLogs;
import org.amberyard.study.CurveWords;
import org.amberyard.study.ResultFindings;
import org.amberyard.study.FigureName;
import org.amberyard.study.StudyCompiler;
import org.amberyard.study.StudyEvaluator;
import org.amberyard.study.StudyFindings;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What the layers below say in English is said in Spanish, with names and figures as they are. */
class CatalogueTest {
    /** Words that a text has which was said in part only. */
    private static final Pattern ENGLISH_WORD = Pattern.compile(" (the|of|and|with|is|are|its|that|for) ");
    /** Steps of a trail that are said in Spanish: the sums of a plan, by year and bus, with what a mass hangs on. */
    private static final int TRAIL_STEPS = 4;
    private static final Pattern WORD_OF_A_CHART = Pattern.compile(" (the|of|and|with|is|are|its|that|for|on|at|then|aged|per|more|drawing) ");
    private static final Catalogue SPANISH = new Catalogue(new Locale("es"), Locale.US);
    private static final Catalogue OF_SPAIN = new Catalogue(new Locale("es"), new Locale("es", "ES"));

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            Bus B03: its role is route but it has no route; choose one, or make it a spare. | \
            Autobús B03: su función es ruta pero no tiene ruta; elija una o hágalo de reserva.
            Bus Baseline: price is 3 USD, which looks like cents; was 0.03 USD meant? | \
            Autobús Baseline: precio es 3 USD, lo que parecen centavos; ¿se quiso decir 0.03 USD?
            Run AM of route R01: distance is 0 mi; it must be at least 0.1 mi. | \
            Recorrido AM de ruta R01: distancia es 0 mi; debe ser al menos 0.1 mi.
            Annual saving (USD) | Ahorro anual (USD)
            By the last edit “A” costs USD 1,234 less: −1,000 energy, −234 other. | \
            Tras la última edición «A» cuesta USD 1,234 menos: −1,000 energía, −234 otros.
            Narrative Need: “{buses replacd}” names no figure. Did you mean one of “buses replaced”, “electric buses bought”? | \
            Texto para solicitud Need: «{buses replacd}» no nombra ninguna cifra. ¿Quiso decir una de “buses replaced”, “electric buses bought”?
            Programme Fund: its status is “applied for”, yet its award is counted as certain; enter how probable it is. | \
            Programa Fund: su estado es «solicitado», pero su subvención se cuenta como segura; indique qué tan probable es.
            Programme Fund: its status is “committed”, yet its probability of award is 60 %; one of the two is not so. | \
            Programa Fund: su estado es «comprometido», pero su probabilidad de subvención es 60 %; una de las dos cosas no es así.
            Plan “A”: B01-2 must be ordered by 2026-04-01, before the price of its type “E” was quoted on 2026-05-15. Name the quote that the order rests on, or move the purchase. | \
            Plan «A»: B01-2 debe pedirse a más tardar el 2026-04-01, antes de que se cotizara el precio de su tipo «E» el 2026-05-15. Nombre la cotización en que se apoya el pedido, o mueva la compra.
            Narrative Need: figures in it are others than when it was given out on 2026-05-01 for “A”. “total project cost” was USD 5,133,021. It is USD 4,900,000 now. “grant requested” was USD 1. It has no figure now. Whoever has the old text needs the new one. | \
            Texto para solicitud Need: sus cifras son otras que cuando se entregó el 2026-05-01 para «A». «costo total del proyecto» era USD 5,133,021. Ahora es USD 4,900,000. «subvención solicitada» era USD 1. Ahora no tiene cifra. Quien tenga el texto anterior necesita el nuevo.
            Change diesel / price of scenario Gift: at -1 price would be -1 money/L, which the field does not allow. | \
            Cambio diésel / precio de escenario Gift: con −1, precio sería −1 money/L, lo que el campo no permite.
            Change R01 / AM / distance of scenario Gift: at -1 distance would be -1 km, which the field does not allow. | \
            Cambio R01 / AM / distancia de escenario Gift: con −1, distancia sería −1 km, lo que el campo no permite.
            Change diesel / price + rise per year of scenario Gift: at -1 price would be -1 money/L, which the field does not allow. | \
            Cambio diésel / precio + aumento al año de escenario Gift: con −1, precio sería −1 money/L, lo que el campo no permite.
            Change depot / charging policy of scenario Slow: “slowly” is nothing that the field can hold; it can hold at once, at a set time, spread to departure, least cost. | \
            Cambio depósito / política de carga de escenario Slow: “slowly” no es nada que el campo pueda contener; puede contener de inmediato, a una hora fija, repartida hasta la salida, costo mínimo.
            Uncertain input Diesel price: the study has no “price + rise per year” of a fuel price named “diesel”; choose each from its list. | \
            Dato incierto Diesel price: el estudio no tiene «precio + aumento al año» de: precio del combustible, llamado «diesel»; elija cada uno de su lista.
            Source note curve – base use of electric bus type E: at -1 price would be -1 money/L, which the field does not allow. | \
            Nota de fuente curva – consumo base de tipo de autobús eléctrico E: con −1, precio sería −1 money/L, lo que el campo no permite.
            source note NOx – idling of engine bus type C | nota de fuente NOx – en ralentí de tipo de autobús de motor C
            change diesel / price of scenario Gift | cambio diésel / precio de escenario Gift
            R10 · Electric C 226 °: fails when aged: 15 new, −1 aged | R10 · Electric C 226 °: falla al envejecer: 15 nuevo, −1 envejecido
            Plan “A”, normal day of January 2040: the meter of charging peaks at 153 kW at 0:15; 13 buses charge then: B01; heat takes 9 kW. | \
            Plan «A», día normal de enero de 2040: el medidor de carga tiene su pico de 153 kW a las 0:15; 13 autobuses cargan entonces: B01; la climatización toma 9 kW.
            Plan “A”, October 2040, tariff T, year 5 of service, charged least cost: USD 3 for 2 kWh of charging, heat and ports (0.141 per kWh). | \
            Plan «A», octubre de 2040, tarifa T, año 5 de servicio, carga costo mínimo: USD 3 por 2 kWh de carga, climatización y puertos (0.141 por kWh).
            Demand: 80 % of 9.0 kW at 00:15 on coldest day, July; drawing then: B1 1.2 kW, B2 0.9 kW (heat only), 8 more 6.5 kW, building 2.0 kW. | \
            Demanda: 80 % de 9.0 kW a las 00:15, día más frío, julio; entonces toman: B1 1.2 kW, B2 0.9 kW (solo climatización), otros 8: 6.5 kW, edificio 2.0 kW.
            Lines: Customer charge (112.00) USD 112; Demand (9 kW × 5.20, set at 00:15 on coldest day, July; drawing then: B1 9.0 kW (heat only)) USD 46. | \
            Renglones: Cargo por cliente (112.00) USD 112; Demanda (9 kW × 5.20, fijada a las 00:15, día más frío, julio; entonces toman: B1 9.0 kW (solo climatización)) USD 46.
            “A” costs less than “B” in 31 % of 1,000 draws (likely 28 % to 34 %). Half the draws cost at least USD 1.26 million more; eight in ten lie between USD 2.1 million more and USD 900 less. | \
            «A» cuesta menos que «B» en 31 % de 1,000 simulaciones (probablemente 28 % a 34 %). La mitad de las simulaciones cuesta al menos USD 1.26 millones más; ocho de cada diez están entre USD 2.1 millones más y USD 900 menos.
            uncertain input Dato incierto 9 | Dato incierto 9
            By this “A” costs USD 1,234 more: +1,234 energy. | \
            Con esto «A» cuesta USD 1,234 más: +1,234 energía.
            “A” costs less than “B” in 61 % of 2,000 draws, seed 1 (likely 59 % to 63 %). Half the draws save more than USD 12; eight in ten lie between USD 3 and USD 30. | \
            «A» cuesta menos que «B» en 61 % de 2,000 simulaciones, semilla 1 (probablemente de 59 % a 63 %). La mitad de las simulaciones ahorra más de USD 12; ocho de cada diez quedan entre USD 3 y USD 30.
            “A” on the mean of 2,000 draws, seed 1, costs USD 5 more, give or take USD 1 (standard error). | \
            «A» en la media de 2,000 simulaciones, semilla 1, cuesta USD 5 más, con un margen de USD 1 (error estándar).
            Diesel price rise goes in equal steps from −0.452 % to +1.23 %, its low and high; the study’s own, 0 %, is none of them. | \
            Diesel price rise va en pasos iguales de −0.452 % a +1.23 %, su bajo y su alto; el valor del estudio, 0 %, no es ninguno de ellos.
            """)
    void sentencesAreSaidWithTheirNamesAndFigures(String english, String spanish) {
        assertEquals(spanish, SPANISH.say(english));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            fails at −4 °F even when new: short by 32 kWh when new, 70 kWh when aged at 15 % reserve; fuel-fired heat would help but not do | \
            falla a −4 °F aun nuevo: le faltan 32 kWh nuevo, 70 kWh viejo con reserva de 15 %; calefacción de combustible: ayudaría, pero no bastaría
            fails at −4 °F from 2031 (after the study): short by 6.1 kWh at 15 % reserve; a midday charge of 48 min would do | \
            falla a −4 °F desde 2031 (después del estudio): le faltan 6.1 kWh con reserva de 15 %; bastaría una carga entre recorridos de 48 min
            fails at −4 °F from 2031: short by 6.1 kWh at 15 % reserve; larger pack: Electric C 226 would do | \
            falla a −4 °F desde 2031: le faltan 6.1 kWh con reserva de 15 %; paquete mayor: Electric C 226: bastaría
            As it is, the plan breaks its cap of USD 1,100,000 a year in 2 of 15 years, by: 2027 USD 226,579; 2032 USD 41,740. | \
            Como está, el plan rebasa su tope de USD 1,100,000 al año en 2 de 15 años, por: 2027 USD 226,579; 2032 USD 41,740.
            3 steps move, but no moves were found that keep the cap of USD 1,100,000 a year in every year. | \
            Se mueven 3 pasos, pero no se hallaron movimientos que respeten el tope de USD 1,100,000 al año en todos los años.
            Bus B07 (Electric C 150): from 2032 to 2031; lost: Clean Fleet Fund. | \
            Autobús B07 (Electric C 150): de 2032 a 2031; se pierde: Clean Fleet Fund.
            “o” stands on other assumptions: prices, routes with trips; the same: climate, bus types; versions 12ab and 34cd. | \
            «o» se apoya en otros supuestos: precios, rutas con viajes; los mismos: clima, tipos de autobús; versiones 12ab y 34cd.
            Plan “A”: no bus can cover some trips in 4 years before the last: 2026 (T002); 2027 (T1, T2, T3, T4, +3); 2028 (T002); +1. | \
            Plan «A»: ningún autobús puede cubrir algunos viajes en 4 años antes del último: 2026 (T002); 2027 (T1, T2, T3, T4, +3); 2028 (T002); +1.
            uncovered: 2 trips, 1 route without a spare | sin cubrir: 2 viajes, 1 ruta sin reserva
            """)
    void sentencesOfRoutesAndPlansAreSaidWithTheirNamesAndFigures(String english, String spanish) {
        assertEquals(spanish, SPANISH.say(english));
    }

    @Test
    void everyFigureOfNarrativesHasASpanishName() {
        for (FigureName name : FigureName.values()) {
            assertTrue(SPANISH.found(name.words()).isPresent(), name.words());
        }
    }

    @Test
    void figuresAreWrittenAsTheLocaleDoes() {
        assertEquals("«P» cuesta USD 1,23 millones en 15 años (valor presente); no hay otro plan con que compararlo.",
                OF_SPAIN.say("“P” costs USD 1.23 million over 15 years (present value); there is no other plan to compare it with."));
        assertEquals("Bus “1.5” needs 1.234,5 kWh, see 2026-08-31.", new Catalogue(Locale.ENGLISH, Locale.GERMANY).say(
                "Bus “1.5” needs 1,234.5 kWh, see 2026-08-31."));
        assertEquals("PM2.5", OF_SPAIN.say("PM2.5"));
        assertEquals("Bus “-5” of B-12 at −5 °F from 2026-08-31 on, in 3-4 h", new Catalogue(Locale.ENGLISH, Locale.US).say(
                "Bus “-5” of B-12 at -5 °F from 2026-08-31 on, in 3-4 h"));
    }

    @Test
    void whatIsNotKnownStaysAsItIs() {
        assertEquals("A text that nobody has translated", SPANISH.say("A text that nobody has translated"));
        assertEquals("Verdict", new Catalogue(Locale.FRENCH, Locale.US).say("Verdict"));
    }

    @Test
    void allThatTheExampleSaysIsKnown() throws StudyFileException {
        Study study = StudyFile.load(Path.of(System.getProperty("basedir", "."))
                .resolve("../../examples/ostrick-vale/ostrick-vale.amberyard").normalize());
        StudyResult result = new StudyEvaluator().evaluate(StudyCompiler.compile(study));
        List<String> texts = new ArrayList<>(Cautions.SENTENCES);
        Headline.of(result, UnitSystem.US).forEach(h -> texts.addAll(h.sentences()));
        StudyFindings.of(study).forEach(f -> texts.add(f.message()));
        ResultFindings.of(study, result).forEach(f -> texts.add(f.message()));
        texts.addAll(ResultTables.titles());
        ResultTables.groups().forEach(g -> texts.add(g.title()));
        IntStream.range(0, ResultTables.titles().size()).mapToObj(t -> ResultTables.headings(t, result, UnitSystem.US))
                .forEach(t -> addColumns(texts, t));
        texts.addAll(words(result, "route_fit", "why"));
        texts.addAll(words(result, "route_outlook", "why"));
        List<String> unknown = texts.stream().filter(t -> SPANISH.found(t).isEmpty()).distinct().toList();
        assertTrue(unknown.isEmpty(), String.join("\n", unknown));
        List<String> mixed = texts.stream().map(SPANISH::say).filter(t -> ENGLISH_WORD.matcher(t.replaceAll("«[^»]*»|“[^”]*”", "")).find())
                .distinct().toList();
        assertTrue(mixed.isEmpty(), String.join("\n", mixed));
    }

    private static List<String> words(StudyResult result, String table, String column) {
        ResultTable made = ResultTables.of(ResultTables.place(table), result, UnitSystem.US, Progress.NONE);
        return IntStream.range(0, made.rows().size()).mapToObj(row -> (String) made.cell(row, column)).distinct().toList();
    }

    /** How the figures of the headline come about, from a figure down to what it shows when it is asked for. */
    @Test
    void theTrailsOfTheHeadlineAreKnown() throws StudyFileException {
        Study study = StudyFile.load(Path.of(System.getProperty("basedir", "."))
                .resolve("../../examples/ostrick-vale/ostrick-vale.amberyard").normalize());
        StudyResult result = new StudyEvaluator().evaluate(StudyCompiler.compile(study));
        int headline = ResultTables.place("headline");
        int columns = ResultTables.headings(headline, result, UnitSystem.US).columns().size();
        Set<String> unknown = new TreeSet<>();
        for (int plan = 0; plan < result.plans().size(); plan++) {
            for (int column = 0; column < columns; column++) {
                unknownOf(study, ResultTables.why(headline, result, plan, column), TRAIL_STEPS, unknown);
            }
        }
        result.plans().forEach(p -> unknown.remove(p.name()));
        assertEquals(Set.of(), unknown);
        assertEquals("costo anual nivelado de Electric in stages", SPANISH.say("level yearly cost of Electric in stages"));
        assertEquals("ahorro de A frente a B", SPANISH.say("saving of A against B"));
        assertEquals("Combustible, valor presente", SPANISH.say("Fuel, present value"));
        assertEquals("Combustible en 2026", SPANISH.say("Fuel in 2026"));
        assertEquals("distancia × factor de NOx ÷ 1,000, en kilogramos", SPANISH.say("distance × NOx factor ÷ 1,000, in kilograms"));
    }

    private static void unknownOf(Study study, Derivation figure, int steps, Set<String> unknown) {
        WhyText.Line line = WhyText.line(study, figure);
        Stream.of(line.name(), line.rule()).filter(t -> !t.isEmpty() && SPANISH.found(t).isEmpty()).forEach(unknown::add);
        if (steps > 0) {
            WhyText.parts(study, figure).forEach(p -> unknownOf(study, p, steps - 1, unknown));
        }
    }

    /** The summaries of charts whose sentences are put together of many parts, for every plan of the example and in every season. */
    @Test
    void summariesOfChartsAreSaidWhole() throws StudyFileException {
        Study study = StudyFile.load(Path.of(System.getProperty("basedir", "."))
                .resolve("../../examples/ostrick-vale/ostrick-vale.amberyard").normalize());
        StudyResult result = new StudyEvaluator().evaluate(StudyCompiler.compile(study));
        List<String> texts = summaries(result);
        List<String> sentences = texts.stream().flatMap(t -> Stream.of(t.split("(?<=[.!?])\\s+"))).distinct().toList();
        assertEquals(List.of(), sentences.stream().filter(t -> SPANISH.found(t).isEmpty()).toList());
        assertEquals(List.of(), sentences.stream().map(SPANISH::say).filter(t -> WORD_OF_A_CHART.matcher(t.replaceAll("«[^»]*»|“[^”]*”", ""))
                .find()).toList());
    }

    private static List<String> summaries(StudyResult result) {
        int year = result.input().years() - 1;
        YardLoads loads = new YardLoads();
        List<String> texts = new ArrayList<>();
        for (int plan = 0; plan < result.plans().size(); plan++) {
            texts.add(RangeMarginChart.of(result, plan, UnitSystem.US, ChartTheme.light()).textAlternative());
            for (int month = 0; month < 12; month += 3) {
                texts.add(BillWaterfallChart.of(result, plan, year, month, loads, UnitSystem.US, ChartTheme.light()).textAlternative());
                YardDay.in(result, plan, year, month).forEach(day -> texts.add(DayLoadChart.of(result, day, loads, UnitSystem.US,
                        ChartTheme.light()).textAlternative()));
            }
        }
        return texts;
    }

    /** All that a calibration by logs may say: of the fit, of each reason against one, and of its tables. */
    @Test
    void whatACalibrationSaysIsKnown() throws StudyFileException {
        Study study = StudyFile.load(Path.of(System.getProperty("basedir", "."))
                .resolve("../../examples/ostrick-vale/ostrick-vale.amberyard").normalize());
        List<String> texts = new ArrayList<>();
        fitInto(texts, study, OptionalDouble.empty());
        fitInto(texts, study, OptionalDouble.of(0.004));
        study.getRoutes().get(0).setEnergyModel(EnergyModel.CURVE);
        CurveLogs.typesWithLogs(study).get(0).setHeaterKw(3);
        study.getConsumptionLogs().get(3).setEnergyKwh(0);
        fitInto(texts, study, OptionalDouble.empty());
        study.getConsumptionLogs().forEach(l -> l.setHours(0));
        fitInto(texts, study, OptionalDouble.empty());
        study.getConsumptionLogs().forEach(l -> l.setHours(l.getDistanceKm() / 30));
        fitInto(texts, study, OptionalDouble.empty());
        study.getConsumptionLogs().forEach(l -> l.setOutsideC(15.0));
        fitInto(texts, study, OptionalDouble.empty());
        study.getConsumptionLogs().subList(2, 15).clear();
        fitInto(texts, study, OptionalDouble.empty());
        assertEquals(List.of(), texts.stream().filter(t -> SPANISH.found(t).isEmpty()).distinct().toList());
        assertEquals("Buen ajuste: la curva yerra en 3 % sobre 15 registros de −4 °F a 84 °F.",
                SPANISH.say("Good fit: the curve is off by 3 % on 15 logs from -4 °F to 84 °F."));
    }

    private static void fitInto(List<String> texts, Study study, OptionalDouble rise) {
        ElectricType type = CurveLogs.typesWithLogs(study).get(0);
        CurveFitting fitting = CurveLogs.of(study, type).fit(CurveFitting.settings(type, rise));
        texts.addAll(CurveWords.of(fitting));
        List.of(ResidualTable.of(fitting), CurveChangeTable.of(fitting)).forEach(table -> {
            texts.add(table.title());
            addColumns(texts, table);
        });
        CurveChangeTable.of(fitting).rows().forEach(row -> texts.add(String.valueOf(row.get(0))));
        fitting.fit().ifPresent(fit -> {
            Chart chart = CurveFitChart.of(type.getName(), fit, fitting.before(), UnitSystem.US, ChartTheme.light());
            texts.add(chart.title());
            texts.add(chart.textAlternative());
        });
    }

    /** Kinds of tables and their columns, as the import of a table offers them. */
    @Test
    void kindsOfTablesAndTheirColumnsAreKnown() {
        Study study = StudyDefaults.create();
        List<String> texts = SheetKind.ALL.stream().flatMap(kind -> Stream.concat(Stream.of(kind.label(), kind.purpose()),
                kind.columns(study).stream().flatMap(c -> Stream.of(c.label(), c.meaning())))).distinct().toList();
        assertEquals(List.of(), texts.stream().filter(t -> SPANISH.found(t).isEmpty()).toList());
        assertEquals("Calendario de reemplazos", SPANISH.say("Replacement schedule"));
    }

    private static void addColumns(List<String> texts, ResultTable table) {
        for (ResultColumn column : table.columns()) {
            texts.add(column.label());
            texts.add(column.meaning());
        }
    }
}

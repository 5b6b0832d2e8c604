package org.amberyard.exchange.weather;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import org.amberyard.exchange.CsvTable;
import org.amberyard.exchange.ImportException;
import org.amberyard.exchange.ProblemList;
import org.amberyard.exchange.StudyUpdate;
import org.amberyard.model.common.Month;
import org.amberyard.model.common.Quality;
import org.amberyard.model.site.SitePackage.Literals;
import org.amberyard.model.study.Study;
import org.eclipse.emf.ecore.EAttribute;

/**
 * Monthly normals in a CSV file: a row for each month, of one station or several, with temperatures in the unit that each header
 * says. Rows of a whole year are passed over.
 */
final class NormalsFile implements WeatherSource {
    private static final Pattern NUMBER = Pattern.compile("[+-]?(\\d{1,4}\\.?\\d{0,6}|\\.\\d{1,6})");
    private static final List<String> WHOLE_YEAR = List.of("annual", "ann", "year", "13");

    private final String file;
    private final NormalsHeader header;
    private final Map<String, Map<Month, MonthValues>> stations = new LinkedHashMap<>();

    private NormalsFile(String file, NormalsHeader header) {
        this.file = file;
        this.header = header;
    }

    static NormalsFile read(Path path) throws ImportException {
        CsvTable table = CsvTable.read(path);
        NormalsFile normals = new NormalsFile(table.file(), NormalsHeader.of(table.header(), table.file()));
        ProblemList problems = new ProblemList(table.file());
        for (int i = 0; i < table.rows().size(); i++) {
            normals.row(table.rows().get(i), i + 2, problems);
        }
        if (problems.isEmpty() && normals.stations.isEmpty()) {
            problems.add(0, "", "The file has no row of a month.");
        }
        problems.refuseIfAny();
        return normals;
    }

    private void row(List<String> cells, int row, ProblemList problems) {
        String text = cells.get(header.month());
        if (cells.stream().allMatch(String::isEmpty) || WHOLE_YEAR.contains(text.toLowerCase(Locale.ROOT))) {
            return;
        }
        Optional<Month> month = month(text);
        if (month.isEmpty()) {
            problems.add(row, "month", "“" + text + "” must be a month: January, Jan or 1.");
            return;
        }
        String station = header.station().isPresent() ? cells.get(header.station().getAsInt()) : "";
        Map<EAttribute, Double> values = values(cells, row, problems);
        checkOrder(values, Literals.MONTH_CLIMATE__MEAN_LOW_C, Literals.MONTH_CLIMATE__MEAN_HIGH_C, row, problems);
        checkOrder(values, Literals.MONTH_CLIMATE__COLDEST_LOW_C, Literals.MONTH_CLIMATE__COLDEST_HIGH_C, row, problems);
        Map<Month, MonthValues> months = stations.computeIfAbsent(station, s -> new EnumMap<>(Month.class));
        if (months.put(month.get(), new MonthValues(month.get(), values)) != null) {
            problems.add(row, "month", month.get().getLiteral() + " stands there twice" + (station.isEmpty() ? "" : " for " + station)
                    + "; keep one row.");
        }
    }

    private static Optional<Month> month(String text) {
        String lower = text.toLowerCase(Locale.ROOT).replace(".", "");
        if (lower.matches("\\d{1,2}")) {
            int number = Integer.parseInt(lower);
            return number >= 1 && number <= 12 ? Optional.of(Month.get(number - 1)) : Optional.empty();
        }
        return Month.VALUES.stream().filter(m -> lower.length() >= 3 && m.getLiteral().toLowerCase(Locale.ROOT).startsWith(lower))
                .findFirst();
    }

    private Map<EAttribute, Double> values(List<String> cells, int row, ProblemList problems) {
        Map<EAttribute, Double> values = new LinkedHashMap<>();
        for (NormalsColumn column : header.columns()) {
            String text = cells.get(column.place());
            boolean number = NUMBER.matcher(text).matches();
            double stored = number ? column.scale().stored(Double.parseDouble(text)) : Double.NaN;
            if (number && column.scale().allows(stored)) {
                values.put(column.attribute(), stored);
            } else {
                problems.add(row, column.header(), "“" + text + "” must be a number, " + column.scale().allowed() + ".");
            }
        }
        return values;
    }

    private static void checkOrder(Map<EAttribute, Double> values, EAttribute low, EAttribute high, int row, ProblemList problems) {
        if (values.containsKey(low) && values.containsKey(high) && values.get(low) > values.get(high)) {
            problems.add(row, "", "The low is above the high; are the columns swapped?");
        }
    }

    @Override
    public List<String> stations() {
        return List.copyOf(stations.keySet());
    }

    @Override
    public WeatherImport load(int station, Study study) throws ImportException {
        String name = stations().get(station);
        List<MonthValues> months = List.copyOf(stations.get(name).values());
        StudyUpdate update = new StudyUpdate(study);
        new ClimateUpdate(study, update, Quality.PUBLISHED, name.isBlank() ? file : file + ", " + name, null).put(months, file);
        return new WeatherImport(update, sentences(name, months));
    }

    private List<String> sentences(String station, List<MonthValues> months) {
        List<String> sentences = new ArrayList<>();
        sentences.add("Normals of " + months.size() + (months.size() == 1 ? " month" : " months")
                + (station.isBlank() ? "" : " at " + station) + ", from the columns "
                + String.join(", ", header.columns().stream().map(NormalsColumn::header).toList()) + ".");
        if (!header.others().isEmpty()) {
            sentences.add("Columns passed over: " + String.join(", ", header.others()) + ".");
        }
        if (header.columns().stream().noneMatch(c -> c.attribute() == Literals.MONTH_CLIMATE__COLDEST_LOW_C)) {
            sentences.add("The file does not tell the coldest days on which buses ran, which decide whether a bus does its route; they stay "
                    + "as they were: check them.");
        }
        return sentences;
    }
}

package org.amberyard.exchange.weather;

import java.time.Month;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import org.amberyard.exchange.ImportException;
import org.amberyard.exchange.ProblemList;
import org.amberyard.exchange.StudyUpdate;
import org.amberyard.model.common.Quality;
import org.amberyard.model.meta.FieldInfo;
import org.amberyard.model.site.Site;
import org.amberyard.model.site.SitePackage.Literals;
import org.amberyard.model.study.Study;
import org.amberyard.study.RoundedText;
import org.eclipse.emf.ecore.EAttribute;

/**
 * Climate of a site by a year of hourly weather: means of the daily lows and highs, the operated days with the lowest low and
 * the highest high, and the sun over that of a clear sky.
 */
final class EpwWeather implements WeatherSource {
    private static final DateTimeFormatter REAL_DAY = DateTimeFormatter.ofPattern("EEE d MMM uuuu", Locale.ENGLISH);
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMM", Locale.ENGLISH);

    private final EpwYear year;
    private final List<EpwMonth> months;

    EpwWeather(EpwYear year) throws ImportException {
        this.year = year;
        List<Month> told = Arrays.stream(Month.values()).filter(year::tells).toList();
        if (told.isEmpty()) {
            throw ProblemList.refusal(year.file(), 0, "", "No month has 20 days with dry bulb temperatures.");
        }
        for (Month month : told) {
            if (year.days(month).stream().noneMatch(year::isOperated)) {
                throw ProblemList.refusal(year.file(), 0, "", word(month) + " has no weekday that is not a holiday of the file.");
            }
        }
        this.months = told.stream().map(m -> EpwMonth.of(year, m)).toList();
    }

    @Override
    public List<String> stations() {
        return List.of(year.place().words());
    }

    @Override
    public WeatherImport load(int station, Study study) throws ImportException {
        StudyUpdate update = new StudyUpdate(study);
        String date = year.days().get(year.days().size() - 1).date().toString();
        String citation = year.file() + ", " + year.place().words();
        putSite(study.getSite(), update, citation, date);
        new ClimateUpdate(study, update, Quality.PUBLISHED, citation, date)
                .put(months.stream().map(EpwWeather::values).toList(), year.file());
        return new WeatherImport(update, sentences(study));
    }

    /** The yard keeps a name of its own. */
    private void putSite(Site site, StudyUpdate update, String citation, String date) {
        String name = site.getName() == null ? "" : site.getName();
        List<String> fields = new ArrayList<>(List.of("latitudeDeg", "elevationM"));
        if ((name.isBlank() || name.equals(FieldInfo.classLabel(Literals.SITE))) && !year.place().city().isBlank()) {
            update.put(site, Literals.SITE__NAME, year.place().city());
            fields.add("name");
        }
        update.put(site, Literals.SITE__LATITUDE_DEG, year.place().latitudeDeg());
        update.put(site, Literals.SITE__ELEVATION_M, year.place().elevationM());
        update.source(site, fields, Quality.PUBLISHED, citation, date);
    }

    private static MonthValues values(EpwMonth month) {
        Map<EAttribute, Double> values = new LinkedHashMap<>();
        values.put(Literals.MONTH_CLIMATE__MEAN_LOW_C, rounded(month.meanLowC(), 10));
        values.put(Literals.MONTH_CLIMATE__MEAN_HIGH_C, rounded(month.meanHighC(), 10));
        values.put(Literals.MONTH_CLIMATE__COLDEST_LOW_C, month.coldest().lowC());
        values.put(Literals.MONTH_CLIMATE__COLDEST_HIGH_C, month.coldest().highC());
        values.put(Literals.MONTH_CLIMATE__HOTTEST_HIGH_C, month.hottest().highC());
        month.sunShare().ifPresent(s -> values.put(Literals.MONTH_CLIMATE__SUN_SHARE, rounded(s, 100)));
        return new MonthValues(org.amberyard.model.common.Month.get(month.month().getValue() - 1), values);
    }

    /** Temperatures to the tenth of a degree that the file has, sun to a hundredth. */
    private static double rounded(double value, int parts) {
        return Math.round(value * parts) / (double) parts;
    }

    private List<String> sentences(Study study) {
        List<String> sentences = new ArrayList<>();
        sentences.add(String.format(Locale.ROOT, "%,d days of hourly weather at %s, at latitude %.2f° and %.0f m above sea level.",
                year.days().size(), year.place().words(), year.place().latitudeDeg(), year.place().elevationM()));
        sentences.add(daysUsed());
        sentences.add("Coldest: " + months.stream().map(m -> extreme(m.coldest(), m.coldest().lowC(), study))
                .collect(Collectors.joining("; ")) + ".");
        sentences.add("Hottest: " + months.stream().map(m -> extreme(m.hottest(), m.hottest().highC(), study))
                .collect(Collectors.joining("; ")) + ".");
        List<String> sunless = months.stream().filter(m -> m.sunShare().isEmpty()).map(m -> word(m.month())).toList();
        if (!sunless.isEmpty()) {
            sentences.add("The file does not tell the sun of " + String.join(", ", sunless) + "; the sun share there stays as it was.");
        }
        if (year.holed() > 0) {
            sentences.add("Days without enough temperatures, which do not count: " + year.holed() + ".");
        }
        List<String> untold = Arrays.stream(Month.values()).filter(m -> !year.tells(m)).map(EpwWeather::word).toList();
        if (!untold.isEmpty()) {
            sentences.add("The file does not tell " + String.join(", ", untold) + ", which stay as they were.");
        }
        return sentences;
    }

    private String daysUsed() {
        if (!year.isReal()) {
            return "The file is a typical year or does not say its days of the week, so that weekends and school holidays cannot be told: "
                    + "the coldest and hottest days are those of all days.";
        }
        String other = year.otherHolidays().isEmpty() ? "" : " Not understood as holidays, and counted as days on which buses run: "
                + String.join(", ", year.otherHolidays()) + ".";
        return "The coldest and hottest days are those of Mondays to Fridays without holidays of the file (" + year.holidays().size()
                + "); it does not know school holidays." + other;
    }

    private String extreme(EpwDay day, double celsius, Study study) {
        return (year.isReal() ? REAL_DAY : DAY).format(day.date()) + " "
                + new RoundedText(study).of(Literals.MONTH_CLIMATE__COLDEST_LOW_C, celsius);
    }

    private static String word(Month month) {
        return org.amberyard.model.common.Month.get(month.getValue() - 1).getLiteral();
    }
}

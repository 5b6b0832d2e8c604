package org.amberyard.exchange.weather;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.amberyard.exchange.ImportException;
import org.amberyard.exchange.ProblemList;
import org.amberyard.exchange.StudyUpdate;
import org.amberyard.model.common.Month;
import org.amberyard.model.common.Quality;
import org.amberyard.model.meta.FieldInfo;
import org.amberyard.model.meta.SourceNotes;
import org.amberyard.model.site.MonthClimate;
import org.amberyard.model.site.Site;
import org.amberyard.model.site.SiteFactory;
import org.amberyard.model.site.SitePackage.Literals;
import org.amberyard.model.study.Study;
import org.eclipse.emf.ecore.EAttribute;

/** Puts what a file tells of months into the climate of a study, month by month; what it does not tell stays. */
final class ClimateUpdate {
    private static final List<EAttribute> TEMPERATURES = List.of(Literals.MONTH_CLIMATE__MEAN_LOW_C,
            Literals.MONTH_CLIMATE__MEAN_HIGH_C, Literals.MONTH_CLIMATE__COLDEST_LOW_C, Literals.MONTH_CLIMATE__COLDEST_HIGH_C,
            Literals.MONTH_CLIMATE__HOTTEST_HIGH_C);

    private final Study study;
    private final StudyUpdate update;
    private final String citation;
    private final Quality quality;
    private final String date;

    ClimateUpdate(Study study, StudyUpdate update, Quality quality, String citation, String date) {
        this.study = study;
        this.update = update;
        this.quality = quality;
        this.citation = citation;
        this.date = date;
    }

    /** @throws ImportException when a month is new to the study and the file does not tell its temperatures */
    void put(List<MonthValues> months, String file) throws ImportException {
        ProblemList problems = new ProblemList(file);
        List<MonthClimate> fresh = new ArrayList<>();
        for (MonthValues month : months) {
            Optional<MonthClimate> known = known(month.month());
            if (known.isPresent()) {
                put(month, known.get());
            } else {
                fresh.add(fresh(month, problems));
            }
        }
        problems.refuseIfAny();
        if (!fresh.isEmpty()) {
            Site site = study.getSite();
            List<MonthClimate> all = new ArrayList<>(site.getClimate());
            all.addAll(fresh);
            update.putElements(site, Literals.SITE__CLIMATE, all, fresh.stream()
                    .map(m -> m.getMonth().getLiteral() + " is added to the climate").toList());
        }
    }

    private Optional<MonthClimate> known(Month month) {
        return study.getSite().getClimate().stream().filter(c -> c.getMonth() == month).findFirst();
    }

    private void put(MonthValues month, MonthClimate climate) {
        month.values().forEach((attribute, value) -> update.put(climate, attribute, value));
        update.source(climate, fields(month), quality, citation, date);
    }

    private MonthClimate fresh(MonthValues month, ProblemList problems) {
        MonthClimate climate = SiteFactory.eINSTANCE.createMonthClimate();
        climate.setMonth(month.month());
        TEMPERATURES.stream().filter(t -> !month.values().containsKey(t)).findFirst().ifPresent(t -> problems.add(0, "",
                month.month().getLiteral() + " is not in the study's climate yet, and the file does not tell its "
                        + FieldInfo.of(t).label().toLowerCase(Locale.ROOT) + "; add a column of it."));
        for (Map.Entry<EAttribute, Double> value : month.values().entrySet()) {
            climate.eSet(value.getKey(), value.getValue());
        }
        fields(month).forEach(f -> climate.getSources().add(SourceNotes.of(f, quality, citation, date)));
        return climate;
    }

    private static List<String> fields(MonthValues month) {
        return month.values().size() > TEMPERATURES.size() ? List.of(SourceNotes.EVERY_FIELD)
                : month.values().keySet().stream().map(EAttribute::getName).toList();
    }
}

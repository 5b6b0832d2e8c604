package org.amberyard.model.meta;

import java.util.List;
import java.util.function.BinaryOperator;
import java.util.function.Function;
import org.amberyard.model.air.EngineEmission;
import org.amberyard.model.air.FuelEmission;
import org.amberyard.model.air.GridEmission;
import org.amberyard.model.air.HealthCost;
import org.amberyard.model.air.SocialCost;
import org.amberyard.model.air.WearEmission;
import org.amberyard.model.common.SourceNote;
import org.amberyard.model.depot.BuildingLoadDay;
import org.amberyard.model.depot.BuildingMonth;
import org.amberyard.model.depot.MeterBillLine;
import org.amberyard.model.depot.MeterDay;
import org.amberyard.model.depot.TariffCharge;
import org.amberyard.model.fleet.BusRecord;
import org.amberyard.model.fleet.ConsumptionLog;
import org.amberyard.model.funding.BusAward;
import org.amberyard.model.plans.PortPurchase;
import org.amberyard.model.plans.Replacement;
import org.amberyard.model.plans.WorkOrder;
import org.amberyard.model.prices.CostIndex;
import org.amberyard.model.prices.FuelPrice;
import org.amberyard.model.prices.PricePoint;
import org.amberyard.model.site.MonthClimate;
import org.amberyard.model.study.Study;
import org.amberyard.model.study.ChartNote;
import org.amberyard.model.study.GivenOutFigure;
import org.amberyard.model.study.YearActuals;
import org.amberyard.model.whatif.InputCorrelation;
import org.amberyard.model.whatif.ScenarioChange;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;

/**
 * Names of elements for people: in outlines, tables, messages and choices. {@link #of} is also the key of an element in files, so where
 * it is made of names of the data dictionary, {@link #read} says their labels instead.
 */
public final class ElementNames {
    private static final String NAME = "name";

    /** Naming of the kinds that have no name of their own. */
    private static final List<Naming<?>> NAMINGS = List.of(
            new Naming<>(MonthClimate.class, m -> m.getMonth().getLiteral()),
            new Naming<>(BusRecord.class, r -> of(r.getBus())),
            new Naming<>(Replacement.class, r -> r.getYear() + " " + of(r.getBus())),
            new Naming<>(PortPurchase.class, p -> p.getYear() + " " + p.getCount() + " × " + of(p.getPortType())),
            new Naming<>(WorkOrder.class, w -> w.getYear() + " " + of(w.getWork())),
            new Naming<>(FuelPrice.class, f -> f.getFuel().getLiteral()),
            new Naming<>(CostIndex.class, i -> i.getSubject().getLiteral()),
            new Naming<>(PricePoint.class, p -> String.valueOf(p.getYear())),
            new Naming<>(ChartNote.class, n -> n.getChart() + (n.getShown() == null || n.getShown().isBlank() ? "" : ": " + n.getShown())),
            new Naming<>(GivenOutFigure.class, f -> f.getFigure() == null ? "?" : f.getFigure()),
            new Naming<>(YearActuals.class, a -> String.valueOf(a.getYear())),
            new Naming<>(BusAward.class, a -> a.getBodyType().getLiteral()),
            new Naming<>(TariffCharge.class, ChargeName::of),
            new Naming<>(BuildingMonth.class, m -> m.getMonth().getLiteral()),
            new Naming<>(BuildingLoadDay.class, d -> d.getMonth().getLiteral() + " " + d.getDayKind().getLiteral()),
            new Naming<>(MeterDay.class, d -> d.getDate() == null || d.getDate().isBlank() ? "?" : d.getDate()),
            new Naming<>(MeterBillLine.class, l -> l.getLine() == null || l.getLine().isBlank() ? placeAmongSiblings(l) : l.getLine()),
            new Naming<>(EngineEmission.class, EmissionName::of),
            new Naming<>(WearEmission.class, EmissionName::of),
            new Naming<>(FuelEmission.class, f -> f.getFuel().getLiteral()),
            new Naming<>(GridEmission.class, g -> g.getRegion() + " " + g.getBasis().getLiteral() + " " + g.getYear()),
            new Naming<>(SocialCost.class, EmissionName::of),
            new Naming<>(HealthCost.class, h -> h.getPollutant().getLiteral() + " of " + h.getEmitter().getLiteral()),
            new Naming<>(ConsumptionLog.class, ElementNames::placeAmongSiblings),
            new Naming<>(InputCorrelation.class, c -> of(c.getFirst()) + " and " + of(c.getSecond())),
            new Naming<>(ScenarioChange.class, c -> c.getElement() == null || c.getElement().isBlank() ? c.getField()
                    : c.getField() == null ? c.getElement() : c.getElement() + " " + c.getField()),
            new Naming<>(SourceNote.class, n -> n.getField() == null ? "?" : n.getField()));

    private ElementNames() {
    }

    private record Naming<T extends EObject>(Class<T> kind, Function<T, String> name) {
        boolean fits(EObject element) {
            return kind.isInstance(element);
        }

        String nameOf(EObject element) {
            return name.apply(kind.cast(element));
        }
    }

    /**
     * Name of an element: its own where it has one, else what tells it from its siblings, else its kind.
     *
     * @param element an element of a study; null, an unset reference, gives {@code ?}
     */
    public static String of(EObject element) {
        if (element == null) {
            return "?";
        }
        EStructuralFeature own = element.eClass().getEStructuralFeature(NAME);
        if (own != null) {
            return ownName(element, own);
        }
        return NAMINGS.stream().filter(n -> n.fits(element)).findFirst().map(n -> n.nameOf(element))
                .orElseGet(() -> kind(element));
    }

    /**
     * Name of an element as people read it, in a language: kinds and fields of which it is made by their labels. A chart, which the model
     * knows by the name of its file only, goes by that with blanks, {@code Electric bill}, in every language.
     */
    public static String read(EObject element, ModelWords words) {
        if (element instanceof ScenarioChange change && change.getField() != null) {
            return whatChanges(change, words) + " / " + PlaceWords.fieldsInName(change.getKind(), change.getField(), words);
        }
        if (element instanceof SourceNote note && note.getField() != null && note.eContainer() != null) {
            return SourceNotes.EVERY_FIELD.equals(note.getField()) ? words.allFields()
                    : PlaceWords.fieldsInName(note.eContainer().eClass().getName(), note.getField(), words);
        }
        if (element instanceof ChartNote note && note.getChart() != null) {
            return Phrase.start(note.getChart().replace('_', ' ')) + of(note).substring(note.getChart().length());
        }
        return of(element);
    }

    /** The element that is named, else the kind, of which there is one or every one is meant. */
    private static String whatChanges(ScenarioChange change, ModelWords words) {
        boolean named = change.getElement() != null && !change.getElement().isBlank() && !InputPlace.EVERY.equals(change.getElement());
        return named ? change.getElement() : change.getKind() == null ? "?" : Phrase.inside(PlaceWords.kindLabel(change.getKind(), words));
    }

    private static String ownName(EObject element, EStructuralFeature feature) {
        Object name = element.eGet(feature);
        return name == null || name.toString().isBlank() ? placeAmongSiblings(element) : name.toString();
    }

    private static String placeAmongSiblings(EObject element) {
        EReference holder = element.eContainmentFeature();
        return holder != null && holder.isMany()
                ? "no. " + (((List<?>) element.eContainer().eGet(holder)).indexOf(element) + 1)
                : "without name";
    }

    /**
     * Kind and name of an element, and its owner where several could own it: {@code bus B03},
     * {@code run AM of route R01}. Files tell elements apart by it, so it always has both.
     */
    public static String withKind(EObject element) {
        return withKind(element, ModelWords.ENGLISH, e -> read(e, ModelWords.ENGLISH), ElementNames::both);
    }

    /** The same for people: the kind is not said twice where the name begins with it, {@code Uncertain input 9}. */
    public static String told(EObject element) {
        return withKind(element, ModelWords.ENGLISH, e -> read(e, ModelWords.ENGLISH));
    }

    /**
     * The same for people in a language.
     *
     * @param words words of the language
     * @param names says the name of an element in it; that of a kind where the element has no name
     */
    public static String withKind(EObject element, ModelWords words, Function<EObject, String> names) {
        return withKind(element, words, names, (kind, name) -> name.regionMatches(true, 0, kind + " ", 0, kind.length() + 1) ? name
                : both(kind, name));
    }

    private static String withKind(EObject element, ModelWords words, Function<EObject, String> names, BinaryOperator<String> join) {
        String kind = Phrase.inside(words.kind(element.eClass()));
        String named = join.apply(kind, names.apply(element));
        return ownerTells(element) ? words.ofOwner(named, withKind(element.eContainer(), words, names, join)) : named;
    }

    private static String both(String kind, String name) {
        return name.equals(kind) ? kind : kind + " " + name;
    }

    private static boolean ownerTells(EObject element) {
        EObject owner = element.eContainer();
        if (owner == null || owner instanceof Study) {
            return false;
        }
        return element instanceof SourceNote || owner.eContainmentFeature() != null && owner.eContainmentFeature().isMany();
    }

    private static String kind(EObject element) {
        return Phrase.inside(FieldInfo.classLabel(element.eClass()));
    }
}

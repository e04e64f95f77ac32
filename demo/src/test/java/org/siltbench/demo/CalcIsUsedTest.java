package org.siltbench.demo;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaMethod;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/**
 * What calc offers the other modules is used by the product, or stands here with the reason why it
 * is offered all the same. The list is exact: a method that found its user leaves it. The parts of
 * a record and the kinds of an interface are no offers of their own.
 */
class CalcIsUsedTest {

  private static final Set<String> OF_EVERY_TYPE =
      Set.of("equals", "hashCode", "toString", "compareTo", "values", "valueOf");

  private static final Map<String, List<String>> OFFERED =
      Map.of(
          "a published formula, with its other inputs and its inverse",
          List.of(
              "AirDensity.unmeasured",
              "AirState.ofMillimetresMercury",
              "Buoyancy.conventionalMass",
              "Buoyancy.massFromReading",
              "BuoyancyChange.uncorrected",
              "CurrieLimits.known",
              "MassRatio.factor",
              "SedimentVolume.concentration",
              "SampleByMass.milligramsPerLitre",
              "DissolvedSolids.neededByAstm",
              "LoadUnits.shortTonsPerDay",
              "EventLoad.overCommonTime",
              "IgnitionResult.volatileShare",
              "Concentration.gPerL"),
          "the ways in which the GUM lets an uncertainty be stated and read",
          List.of(
              "StandardUncertainty.certificate",
              "StandardUncertainty.dofOfEstimate",
              "StandardUncertainty.resolution",
              "StandardUncertainty.triangular",
              "Part.known",
              "Budget.ofIndependent",
              "Budget.expanded",
              "Budget.dof",
              "Budget.unit",
              "Budget.value",
              "Cause.means"),
          "what is known of a sample, a line or a draw beside what the reports print",
          List.of(
              "Summary.degreesOfFreedom",
              "Summary.deviationOfMean",
              "Summary.relativeDeviation",
              "Line.predictionDeviationAt",
              "Line.uncertaintyAt",
              "Spread.standardDeviation",
              "Input.student",
              "Outcome.quantile",
              "Outcome.shortest",
              "ClassLimits.nominals"),
          "rules and figures in other words than those of the presets",
          List.of("ConstantRule.within", "DuplicateRule.ofPercent", "ReportingLimit.standing"),
          "the English sentence of a reason that the window tells in its own language",
          List.of("RowFault.expected", "StormAdvice.sentence", "VolumeAdvice.sentence"),
          "exact masses and identifiers, whole",
          List.of("Mass.negate", "Mass.toGrams", "FilterId.serial"));

  @Test
  void everyMethodHasAUserOrAReason() {
    JavaClasses product =
        new ClassFileImporter()
            .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
            .importPackages("org.siltbench");
    Set<String> idle =
        product.stream()
            .filter(type -> type.getPackageName().startsWith("org.siltbench.calc"))
            .filter(type -> type.getModifiers().contains(JavaModifier.PUBLIC))
            .flatMap(type -> type.getMethods().stream())
            .filter(CalcIsUsedTest::isOffered)
            .filter(method -> !isUsed(method))
            .map(method -> method.getOwner().getSimpleName() + "." + method.getName())
            .collect(Collectors.toCollection(TreeSet::new));
    Set<String> offered = new TreeSet<>();
    OFFERED.values().forEach(offered::addAll);
    assertEquals(offered, idle);
  }

  private static boolean isOffered(JavaMethod method) {
    Set<JavaModifier> is = method.getModifiers();
    return is.contains(JavaModifier.PUBLIC)
        && !is.contains(JavaModifier.SYNTHETIC)
        && !OF_EVERY_TYPE.contains(method.getName())
        && !isPartOfRecord(method)
        && !isOfAnInterface(method);
  }

  private static boolean isPartOfRecord(JavaMethod method) {
    return method.getOwner().isRecord()
        && method.getRawParameterTypes().isEmpty()
        && method.getOwner().tryGetField(method.getName()).isPresent();
  }

  private static boolean isOfAnInterface(JavaMethod method) {
    return method.getOwner().getAllRawInterfaces().stream()
        .map(JavaClass::getMethods)
        .anyMatch(of -> of.stream().anyMatch(m -> m.getName().equals(method.getName())));
  }

  private static boolean isUsed(JavaMethod method) {
    return !method.getReferencesToSelf().isEmpty()
        || method.getCallsOfSelf().stream().anyMatch(call -> !call.getOrigin().equals(method));
  }
}

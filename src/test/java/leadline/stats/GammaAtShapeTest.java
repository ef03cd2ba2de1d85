package leadline.stats;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.hipparchus.distribution.continuous.GammaDistribution;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class GammaAtShapeTest {

  /**
   * Source: mpmath with 50 digits, its incomplete gamma function and difference quotients of it
   * with steps of 1e-14: logarithm of the share failed (F) or surviving (S), its slopes by k, by u
   * and the curvatures by k, both, u.
   */
  @ParameterizedTest
  @CsvSource({
    "F,0.0001,-3.0,-0.0011633211927974,-10.633299144364,9.9999502180337e-5,9998.2557624132,0.99999004411691,-4.9781842346206e-10",
    "S,0.0001,-3.0,-6.7570578716893,9135.1515284195,-0.085910364486278,-92137710.974497,-73.381660443823,-0.0073887540400947",
    "S,0.0001,2.0,-7.3184723038187,8491.021543017,-0.15057856649995,-87189549.256975,-225.25892684595,-0.022577699198313",
    "S,0.03,0.5,-2.6271008892745,20.156974624552,-0.36695042227989,-808.12828799706,-3.6878519743748,-0.12751115608463",
    "F,0.3,-2.0,-0.8623230660312,-2.0895290420604,0.2907570166171,2.077935483652,0.94575848339236,-0.0091174426860185",
    "S,0.3,1.5,-2.9578400408052,-1.9094139275688,-1.8337141195717,-2.9038166983802,-4.0823542397275,-1.4471807498455",
    "S,1.0,0.25,-1.2840254166877,0.044589784949871,-1.2840254166877,-0.22204503607311,-0.64021566760316,-1.2840254166877",
    "F,2.5,-0.75,-1.5952592951402,-0.35581355865112,1.7252757150111,0.045036369140676,0.59794795017586,-0.70079336034836",
    "S,2.5,1.25,-5.5945179188835,-1.372675354139,-7.3868728404992,0.033547665409025,-2.5519170168158,-8.5762734716961",
    "F,12.0,-0.5,-2.7039747378293,-0.13720046136466,5.7097701725109,0.0021309296922462,0.41632658724184,-5.6420413872508",
    "S,12.0,0.5,-3.739011988446,-0.17643495984174,-9.6883941679392,0.0016315967929572,-0.67778706340489,-18.444173045328",
    "S,45.0,0.125,-1.7005326253731,-0.013003861890959,-10.139038058865,6.3332274692067e-5,-0.16230237705581,-42.05021726856",
    "F,80.0,-0.25,-4.046242529747,-0.033723168851931,20.35268831155,5.1820574667947e-5,0.22765309030937,-54.072024154569",
    "S,80.0,0.25,-4.7216148803856,-0.038821435718677,-26.327517059814,4.8391470097721e-5,-0.29115705533576,-94.92343427341",
    "F,10000.0,-0.03125,-6.9591580575445,-0.00052615489707398,334.63373774612,3.781164381191e-9,0.031094586563235,-9023.7609825456",
    "S,10000.0,0.03125,-7.0924878935532,-0.00053627406593218,-345.37687840752,3.7683609305847e-9,-0.032074252774066,-9650.7982179434"
  })
  void valuesAndSlopesAreThoseOfFiftyDigits(
      char which,
      double k,
      double u,
      double value,
      double byShape,
      double byOffset,
      double byShapeTwice,
      double byBoth,
      double byOffsetTwice) {
    PlaneJet jet = new PlaneJet();
    GammaAtShape form = new GammaAtShape(k);
    if (which == 'F') {
      form.logFailure(u, jet);
    } else {
      form.logSurvival(u, jet);
    }
    assertEquals(1, jet.value / value, 1e-11);
    assertEquals(1, jet.byShape / byShape, 1e-10);
    assertEquals(1, jet.byOffset / byOffset, 1e-10);
    assertEquals(1, jet.byShapeTwice / byShapeTwice, 1e-7);
    assertEquals(1, jet.byBoth / byBoth, 1e-9);
    assertEquals(1, jet.byOffsetTwice / byOffsetTwice, 1e-9);
  }

  /** Source of the law: derivatives are limits of difference quotients. */
  @ParameterizedTest
  @ValueSource(doubles = {0.01, 0.049, 0.051, 0.7, 1, 3, 17, 49.9, 50.1, 400})
  void slopesAreThoseOfTheValues(double k) {
    PlaneJet jet = new PlaneJet();
    PlaneJet less = new PlaneJet();
    PlaneJet more = new PlaneJet();
    double step = 1e-4;
    for (double z = -5; z < 5; z += 0.37) {
      double u = z / Math.sqrt(Math.max(1, k));
      for (Log log :
          new Log[] {
            GammaAtShape::logDensity, GammaAtShape::logSurvival, GammaAtShape::logFailure
          }) {
        log.of(new GammaAtShape(k), u, jet);
        log.of(new GammaAtShape(k * (1 - step)), u, less);
        log.of(new GammaAtShape(k * (1 + step)), u, more);
        double size = 1 + Math.abs(jet.value);
        assertEquals((more.value - less.value) / (2 * step), k * jet.byShape, 1e-6 * size);
        assertEquals(
            (more.byShape - less.byShape) / (2 * step) * k, k * k * jet.byShapeTwice, 1e-6 * size);
        log.of(new GammaAtShape(k), u - step, less);
        log.of(new GammaAtShape(k), u + step, more);
        double slope = 1 + Math.abs(jet.byOffset);
        assertEquals((more.value - less.value) / (2 * step), jet.byOffset, 1e-6 * slope * slope);
        assertEquals((more.byShape - less.byShape) / (2 * step), jet.byBoth, 1e-6 * slope * slope);
        assertEquals(
            (more.byOffset - less.byOffset) / (2 * step),
            jet.byOffsetTwice,
            1e-6 * Math.max(1, k) * slope * slope);
      }
    }
  }

  private interface Log {
    void of(GammaAtShape form, double u, PlaneJet jet);
  }

  /** Source: the gamma distribution of the library, by its own series and continued fraction. */
  @ParameterizedTest
  @ValueSource(doubles = {0.03, 0.4, 1, 3, 17, 49, 60, 900})
  void sharesAreThoseOfTheLibrary(double k) {
    GammaDistribution library = new GammaDistribution(k, 1);
    PlaneJet jet = new PlaneJet();
    for (double share : new double[] {1e-6, 0.01, 0.3, 0.5, 0.8, 0.99, 0.9999}) {
      double u = new GammaAtShape(k).quantile(share);
      double age = k * Math.exp(u);
      assertEquals(1, library.cumulativeProbability(age) / share, 1e-9);
      if (age > 1e-4) {
        new GammaAtShape(k).logDensity(u, jet);
        assertEquals(library.logDensity(age) + Math.log(age), jet.value, 1e-10);
      }
      new GammaAtShape(k).logSurvival(u, jet);
      assertEquals(1, Math.exp(jet.value) / (1 - share), 1e-11);
    }
  }
}

package leadline.lake;

import java.time.Instant;

/** A batch taken back: from that moment on it counts nowhere. Its rows stay in the lake. */
public record Withdrawal(String batch, Instant at, String programVersion) {}

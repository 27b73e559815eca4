package padside.store;

/** What the log needs to be told about the machine it runs on. */
public interface Machine {
  /** Who writes, for the header of the journal and for whoever finds the log in use. */
  record Identity(
      String label,
      String bootId,
      String zone,
      String uptimeSource,
      String programVersion,
      long processId) {}

  /** Milliseconds since 1970 UTC by the wall clock; may be wrong, nothing is ordered by it. */
  long wallMillis();

  /** Seconds since the machine was started. */
  double uptimeSeconds();

  /** Eighty fresh random bits as 20 lower-case hex digits. */
  String freshRun();

  Identity identity();
}

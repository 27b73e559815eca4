package padside.store;

/** The journals of a log, copied to another medium. */
final class Mirror {
  /** What a backup's folder is called. */
  static final String FOLDER = "padside-backup";

  private Mirror() {}
}

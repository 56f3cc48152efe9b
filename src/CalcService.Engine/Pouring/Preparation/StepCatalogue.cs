using CalcService.Engine.Provenance;

namespace CalcService.Engine.Pouring.Preparation;

/// <summary>The tasks from the rope as delivered to the set cone. Several definitions of one task are ways to do it.</summary>
public static class StepCatalogue
{
    private static readonly Source Iso = new("ISO 17558", "§4.5", Basis.Published);
    private static readonly Source Api = new("API RP 9B", "socketing with resin", Basis.FromMemory);
    private static readonly Source Navy = new("NAVEDTRA 14081", "seizing of wire rope", Basis.Published);

    public static StepDefinition Measure { get; } = new("measure",
        "Measure the rope near its end over two diameters at right angles, and the basket at its small end, its mouth and along its axis. "
            + "The plan was made with {ropeDiameter}, {smallEnd}, {mouth} and {basketLength}.",
        Source.CommonPractice);

    public static StepDefinition Seize { get; } = new("seize",
        "Put on {seizings} seizings, each {widthLeast} to {widthMost} wide and {spacing} apart, the top one {broomLength} below the place "
            + "of the cut.", Navy);

    public static StepDefinition Cut { get; } = new("cut",
        "Seize both sides of the cut and cut the rope square, without heat, {broomLength} above the top seizing.", Navy);

    public static StepDefinition Open { get; } = new("openBroom",
        "Open the strands and then each wire down to the top seizing, no wider than {broomAngle} included and without a sharp bend.", Iso);

    public static StepDefinition CoreFibre { get; } = new("core", "Cut the fibre core out down to the top seizing.", Iso);

    public static StepDefinition CoreWire { get; } = new("core", "Open the wire core too, wire by wire.", Iso);

    public static StepDefinition CoreUnknown { get; } = new("core",
        "Find out what the core is: fibre is cut out down to the top seizing, a wire core is opened wire by wire.", Iso);

    public static StepDefinition Plastic { get; } = new("plastic", "Take the plastic off every wire of the broom down to the top seizing.",
        Source.CommonPractice);

    public static StepDefinition Degrease { get; } = new("degrease",
        "Soak and brush the heavy lubricant off the broom, and change the solvent until it stays clear.", Source.CommonPractice);

    public static StepDefinition CleanBright { get; } = new("clean",
        "Hang the broom down and clean every wire with fresh solvent, from the top seizing to the ends. No acid, no flux; touch no wire "
            + "afterwards.", Api);

    public static StepDefinition CleanZinc { get; } = new("clean",
        "Hang the broom down and clean every wire with fresh solvent, from the top seizing to the ends. Leave the zinc on: no acid, no "
            + "flux, no emery; touch no wire afterwards.", Api);

    public static StepDefinition CleanStainless { get; } = new("clean",
        "Hang the broom down and clean every wire as the makers of rope and compound say for stainless wire. No acid, no flux; touch no "
            + "wire afterwards.", Api);

    public static StepDefinition CleanUnknown { get; } = new("clean",
        "Find out whether the wires are bright, zinc coated or stainless, then clean every wire, broom down, with fresh solvent. No acid, "
            + "no flux; touch no wire afterwards.", Api);

    public static StepDefinition Dry { get; } = new("dry",
        "Let the broom drip and dry, ends down, until no solvent is left between the wires.", Source.CommonPractice);

    public static StepDefinition DrawIn { get; } = new("drawIn",
        "Close the broom, draw it into the basket and stop with the wire ends {below} below the mouth.", Api);

    public static StepDefinition DrawInUnstated { get; } = new("drawIn",
        "Close the broom, draw it into the basket and stop with the wire ends slightly below the mouth.", Api);

    public static StepDefinition Space { get; } = new("space",
        "Spread the wires evenly over the whole section: {gapSmallEnd} between wires at the small end, {gapThird} at one third, "
            + "{gapMouth} at the mouth. The lower third works hardest: no bundle there, no wire against the wall.",
        Source.CommonPractice);

    public static StepDefinition SpaceUnstated { get; } = new("space",
        "Spread the wires evenly over the whole section. The lower third works hardest: no bundle there, no wire against the wall.",
        Source.CommonPractice);

    public static StepDefinition Align { get; } = new("align",
        "Hang basket and rope plumb and in line, with {straightBelow} of rope straight below the socket.", Source.CommonPractice);

    public static StepDefinition AlignUnstated { get; } = new("align",
        "Hang basket and rope plumb and in line, the rope straight below the socket as far as its maker asks; measure both.",
        Source.CommonPractice);

    public static StepDefinition Seal { get; } = new("seal",
        "Seal the small end round the rope with putty so that nothing runs out. No putty inside the basket.", Source.CommonPractice);

    public static StepDefinition Vent { get; } = new("vent", "Make a vent through the seal, and close it when compound comes out.",
        Source.CommonPractice);

    public static StepDefinition Read { get; } = new("read",
        "Read air, steel, compound and humidity, write them down and hold them against the hold points. Readings hold until {validUntil}.",
        Source.CommonPractice);

    public static StepDefinition Mix { get; } = new("mix",
        "Mix {number}, at {startsAt}: {kits}, whole. In this order: {order}. Stir {mixingTime}{vessel}.", Source.DataSheet("mixing"));

    public static StepDefinition Witness { get; } = new("witnessSample",
        "Fill a cup from mix {number}, mark it {label} and leave it beside the ends.", Source.CommonPractice);

    public static StepDefinition Fill { get; } = new("fill",
        "Fill {fills} from mix {number}, each basket in one pour without a break, up to the mouth. Stop at {stopAt}: nothing of this mix "
            + "is poured after.", Api);

    public static StepDefinition Leave { get; } = new("leave",
        "Leave the ends as they hang until the compound has gelled in the mouth and in the cup, not before {gelledAt}. Never top up set "
            + "resin, never lay a flame or a lid on it.", Source.CommonPractice);

    /// <summary>Every definition, in the order of the work.</summary>
    public static IReadOnlyList<StepDefinition> All { get; } =
    [
        Measure, Seize, Cut, Open, CoreFibre, CoreWire, CoreUnknown, Plastic, Degrease, CleanBright, CleanZinc, CleanStainless,
            CleanUnknown, Dry,
        DrawIn, DrawInUnstated, Space, SpaceUnstated, Align, AlignUnstated, Seal, Vent, Read, Mix, Witness, Fill, Leave,
    ];
}

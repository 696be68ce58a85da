namespace MeshSim.Files.Tests.Fixtures;

/// <summary>A small good home, invented: two rooms below, one above, a mesh and a star. Tests change one text and see what is said.</summary>
internal static class SampleHome
{
    public const string HomeYaml =
        """
        home: Sample
        region: EU
        north: 0
        model: { exponent: 2, shadowing: 5, availability: 0.9 }
        constructions:
          - { construction: old-wall, layers: "brick:220, plaster:15" }
          - { construction: dark-film, use: window, stated: { 433.92: 10, 868.4: 12, 2440: 20 }, spread: 5 }
        storeys:
          - storey: ground
            ceiling: 2.5
            outer: cavity-brick
            inner: stud-partition
            rooms:
              hall: { from: [0, 0], to: [2, 4] }
              kitchen: { corners: [[2, 0], [6, 0], [6, 4], [2, 4]] }
            walls:
              - { between: [hall, kitchen], is: old-wall }
              - { of: kitchen, facing: east, is: brick-full }
              - { line: [[3, 1], [3, 2]], is: brick-half, name: stub }
            openings:
              - { door: kitchen door, between: [hall, kitchen], at: 1, width: 0.8, height: 2, is: door-timber }
              - { window: sink window, of: kitchen, facing: south, at: 1, width: 1.2, sill: 1, height: 1, is: dark-film }
            objects:
              - { object: fridge, from: [5.2, 3.2], to: [5.8, 3.8], height: 1.8, is: metal-cabinet }
          - storey: first
            ceiling: 2.4
            floor: joists-chipboard-plasterboard
            structure: 0.3
            stairwells: [{ from: [0.2, 1], to: [1.2, 3] }]
            outer: cavity-brick
            rooms:
              bedroom: { from: [0, 0], to: [6, 4] }
        networks:
          - { network: plugs, radio: ieee802154-2450, channel: 20, coordinator: stick }
          - { network: meters, radio: short-range-868, coordinator: receiver }
        wifi:
          - { access point: shelf, storey: ground, at: [1, 1, 2.2], channel: 6, width: 20, power: 20, busy: 0.3 }
        states:
          - { state: bedtime, off: [lamp], circuits off: [kitchen], switches off: [bed switch], open: [kitchen door], must hold: true }
        """;

    public const string DevicesCsv =
        """
        id,name,network,kind,power,role,storey,x,y,height,room,mounting,circuit,switched_by,tx_dbm,note
        stick,hub stick,plugs,stick,usb,,ground,0.5,0.5,1,hall,in-cupboard,,,,
        lamp,standing lamp,plugs,bulb,mains,,ground,4,3,1.5,kitchen,lamp-shade,kitchen,,,
        bed-lamp,,plugs,bulb,mains,router,first,3,3,1.5,bedroom,,lights,bed switch,,"goes off, often"
        door,,plugs,contact,battery,,ground,1.9,1.2,2,hall,surface,,,0,
        receiver,,meters,receiver,mains,coordinator,ground,0.6,0.6,1,,,,,,
        meter,,meters,meter,battery,end device,ground,5.5,0.5,0.5,,in-metal-cabinet,,,,
        """;

    public const string OutletsCsv =
        """
        id,storey,x,y,height,room,circuit
        hall-1,ground,0.1,3,0.3,hall,sockets
        kitchen-1,ground,5.9,2,0.3,,kitchen
        """;

    public const string ReadingsCsv =
        """
        from,to,rssi_dbm,note
        stick,lamp,-61,
        lamp,door,,not heard
        """;
}
